// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "files"
    title: qsTr("Passage files")
    purpose: [
        qsTr("Carry passages from a teacher to a student: a file holds passages and their pieces, and nothing of what was played. Before anything is taken from one you see what it would change.")
    ]
    why: [
        qsTr("What you have edited since it came is marked, so that a new version of your teacher's does not cover your own work unseen. The same file twice changes nothing.")
    ]
}
