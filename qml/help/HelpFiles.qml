// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "files"
    title: qsTrId("help.files.title")
    purpose: [
        qsTrId("help.files.what.carry")
    ]
    why: [
        qsTrId("help.files.what.edited")
    ]
}
