// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    readonly property KeyBindings bound: PracticeRoom.keys

    name: "log"
    title: qsTr("Practice log")
    purpose: [
        qsTr("Everything that happened, day by day: every run with its tempo, its mark and where a miss fell; tempi set by hand; run-throughs; your own notes. Marks taken back stay as taken back."),
        qsTr("The curve shows the tempo by day or by run. Where it breaks shows the misses of a passage by bar and beat, and makes a smaller passage of the worst bars, with a bar to run up."),
        qsTr("It is written to the practice folder on this computer and nowhere else. Nothing is sent away. Copy the folder, or let your own file sync carry it, and all is there.")
    ]
    keys: [
        [bound.stretchKeys, qsTr("makes a passage of the bars that break")],
        [qsTr("Plus, minus, 0"), qsTr("on the curve: closer, farther, all of it")],
        [qsTr("Left, Right"), qsTr("on the curve: move along; with Shift run by run")],
        [qsTr("Up, Down"), qsTr("on the curve: the next passage; in the list: the next line")],
        [qsTr("PgUp, PgDown, Home, End"), qsTr("through the days")]
    ]
    why: [
        qsTr("You hear a slip first and press after: each miss is put back by your reaction time. A quarter of a second is a guess; the settings have your own."),
        qsTr("Days apart help to keep what was learned (Simmons 2012). Minutes apart are a rest: pauses up to a quarter of an hour changed nothing for beginners at the piano, tested five minutes later (Wiseheart, D'Souza and Chae 2017). One day missed now and then is told as fine, two in a row are told; that is our choice.")
    ]
    sources: [
        "A. L. Simmons (2012), “Distributed practice and procedural memory consolidation in musicians' skill learning”, Journal of Research in Music Education 59(4), 357–368",
        "M. Wiseheart, A. A. D'Souza, J. Chae (2017), “Lack of spacing effects during piano learning”, PLOS ONE, doi 10.1371/journal.pone.0182986"
    ]
}
