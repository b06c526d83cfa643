// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    readonly property KeyBindings bound: PracticeRoom.keys

    name: "runThrough"
    title: qsTr("Run-through")
    purpose: [
        qsTr("A whole piece without the click, from start to finish; the way there is in the form of a passage of that piece. Press the key where the music stops, and play on. The clock guesses the bar, and you put it right before the run-through is kept.")
    ]
    keys: [
        [bound.markKeys, qsTr("start; then: the music stopped here")],
        [bound.cleanKeys, qsTr("the last note")],
        [bound.backKeys, qsTr("take the last stop back")],
        [bound.stopKeys, qsTr("give up")]
    ]
    why: [
        qsTr("It shows what the click hides: where the piece breaks when nothing leads. A stop at a bar that is not known may have been anywhere, and counts against every passage of the piece."),
        qsTr("A passage is kept while the newest two run-throughs did not stop in it. Two is our choice, with no source: few enough to be played, more than luck.")
    ]
}
