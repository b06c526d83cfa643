// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    readonly property KeyBindings bound: PracticeRoom.keys

    name: "passages"
    title: qsTr("Passages")
    purpose: [
        qsTr("All your passages: by the next date of their piece, by how long they have rested, or by how far they have to climb. The form beside the list holds what the chosen one is made of: bars, meter, tempi, rule, click, and how it is played."),
        qsTr("Its bars, a start and a target are enough; the rest has a good beginning. The form says how long a run takes, and about how many runs a full row asks for."),
        qsTr("Gentle near the target: a miss there drops one climb, and at the target only the second in a row drops.")
    ]
    keys: [
        [qsTr("Up, Down"), qsTr("from passage to passage in the list")],
        [bound.saveKeys, qsTr("save what the form holds, and drill it")]
    ]
    why: [
        qsTr("Short passages come clean sooner: in a long one a single bad bar brings the whole run down. Cutting a passage where it breaks is common practice, with no source."),
        qsTr("About how many runs: this is arithmetic for a player of whose runs nine in ten are clean, who neither tires nor learns. It is no promise.")
    ]
}
