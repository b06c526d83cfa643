// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    purpose: [
        qsTrId("help.files.what.carry")
    ]
    why: [
        qsTrId("help.files.what.edited")
    ]
}
