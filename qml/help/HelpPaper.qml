// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "paper"
    title: qsTrId("help.paper.title")
    purpose: [
        qsTrId("help.paper.what.print")
    ]
    why: [
        qsTrId("help.paper.why.order"),
        qsTrId("help.paper.why.earlier-day")
    ]
}
