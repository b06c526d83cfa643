// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    purpose: [
        qsTrId("help.paper.what.print")
    ]
    why: [
        qsTrId("help.paper.why.order"),
        qsTrId("help.paper.why.earlier-day")
    ]
}
