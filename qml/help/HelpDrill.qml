// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    readonly property KeyBindings bound: PracticeRoom.keys

    name: "drill"
    title: qsTr("Drill")
    purpose: [
        qsTr("Count-in, run, breath, and again. A run that reaches its last bar without a miss is clean by itself. A miss drops the tempo, never below the floor; a full row of clean runs climbs one step, never past the target. A miss or a climb starts the row again."),
        qsTr("Pressed late? A press in the breath after a clean run makes that run a miss after all."),
        qsTr("A full row at the target counts as secure. Secure on three different days, and the passage is secure as a whole. A new day opens two rungs below the last full row. The settings change both."),
        qsTr("Felt as: quarter = 60 and eighth = 120 are one speed; another beat turns everything over and keeps your row. Find the tempo: name one you think you can play, and each miss drops until a full row has found yours. A try, and runs without the click, in context or at half tempo, move nothing. Each articulation has a best of its own.")
    ]
    readonly property var always: [
        [bound.markKeys, qsTr("start; while the click runs, mark a miss")],
        [bound.cleanKeys, qsTr("end an open-ended run clean")],
        [bound.backKeys, qsTr("take back the last mark")],
        [qsTr("%1; %2", "keys for up; keys for down").arg(bound.fasterKeys).arg(bound.slowerKeys), qsTr("the tempo up and down, while stopped")],
        [bound.tryKeys, qsTr("one try at the target")],
        [bound.hearKeys, qsTr("hear the passage first, where its bars came from a score")],
        [bound.nextKeys, qsTr("the next passage, while stopped")],
        [bound.stopKeys, qsTr("stop")]
    ]
    keys: bound.pedalKeys === "" ? always : always.concat([[bound.pedalKeys, qsTr("everything: a press starts or marks a miss, two presses take back; held, it stops the click, and while stopped it opens the next passage")]])
    why: [
        qsTr("Drop and climb make a staircase as hearing tests use it. It settles about where so many runs are clean as its steps decide: with five in a row, drop 4 and climb 2, about 92 of 100 (Levitt 1971, Kaernbach 1991, García-Pérez 1998). The formula supposes a player who neither tires nor learns."),
        qsTr("Climbing step by step is customary. It is not shown to beat other orders of tempi: among sixty school wind players a steady climb, the full tempo and both in turn made no significant difference (Henley 2001). The rule makes for few misses and an honest record."),
        qsTr("A full row is no proof: five clean of five only say, at 95 %, that more than 54 of 100 runs are clean."),
        qsTr("Going on after the first success helps to keep what was learned, to a moderate degree and in many kinds of tasks (Driskell, Willis and Copper 1992); how much in music is not known."),
        qsTr("A change of tempo below about three in a hundred is hard to hear (Drake and Botte 1993). So a climb and a drop are told by short signals.")
    ]
    sources: [
        "H. Levitt (1971), “Transformed up-down methods in psychoacoustics”, Journal of the Acoustical Society of America 49(2), 467–477",
        "C. Kaernbach (1991), “Simple adaptive testing with the weighted up-down method”, Perception & Psychophysics 49(3), 227–229",
        "M. A. García-Pérez (1998), “Forced-choice staircases with fixed step sizes”, Vision Research 38(12), 1861–1881",
        "Henley (2001), “Effects of modeling and tempo patterns as practice techniques on the performance of high school instrumentalists”, Journal of Research in Music Education, doi 10.2307/3345868",
        "Driskell, Willis, Copper (1992), “Effect of overlearning on retention”, Journal of Applied Psychology",
        "C. Drake, M.-C. Botte (1993), “Tempo sensitivity in auditory sequences: evidence for a multiple-look model”, Perception & Psychophysics 54, 277–286"
    ]
}
