// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    readonly property KeyBindings bound: PracticeRoom.keys

    name: "runThrough"
    title: qsTrId("help.run-through.title")
    purpose: [
        qsTrId("help.run-through.what.whole")
    ]
    keys: [
        [bound.markKeys, qsTrId("help.run-through.key.start")],
        [bound.cleanKeys, qsTrId("help.run-through.key.end")],
        [bound.backKeys, qsTrId("help.run-through.key.take-back")],
        [bound.stopKeys, qsTrId("help.run-through.key.give-up")]
    ]
    why: [
        qsTrId("help.run-through.why.hides"),
        qsTrId("help.run-through.why.kept")
    ]
}
