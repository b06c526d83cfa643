// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    purpose: [
        qsTrId("help.drill.what.cycle"),
        qsTrId("help.drill.what.late"),
        qsTrId("help.drill.what.secure"),
        qsTrId("help.drill.what.ways")
    ]
    readonly property var always: [
        [bound.shown.mark, qsTrId("help.drill.key.miss")],
        [bound.shown.clean, qsTrId("help.drill.key.clean")],
        [bound.shown.back, qsTrId("help.drill.key.take-back")],
        [qsTrId("help.drill.key.up-down").arg(bound.shown.faster).arg(bound.shown.slower), qsTrId("help.drill.key.tempo")],
        [bound.shown.try, qsTrId("help.drill.key.try")],
        [bound.shown.hear, qsTrId("help.drill.key.hear")],
        [bound.shown.next, qsTrId("help.drill.key.next")],
        [bound.shown.stop, qsTrId("help.drill.key.stop")]
    ]
    keys: bound.shown.pedal === "" ? always : always.concat([[bound.shown.pedal, qsTrId("help.drill.key.pedal")]])
    why: [
        qsTrId("help.drill.why.staircase"),
        qsTrId("help.drill.why.climbing"),
        qsTrId("help.drill.why.full-streak"),
        qsTrId("help.drill.why.going-on"),
        qsTrId("help.drill.why.tempo-heard")
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
