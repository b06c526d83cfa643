// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    purpose: [
        qsTrId("help.scales.what.grid"),
        qsTrId("help.scales.what.suggested"),
        qsTrId("help.scales.what.new-cell")
    ]
    keys: [
        [qsTrId("help.scales.key.move.keys"), qsTrId("help.scales.key.move")],
        [qsTrId("help.scales.key.suggested.keys"), qsTrId("help.scales.key.suggested")],
        [qsTrId("help.scales.key.drill.keys"), qsTrId("help.scales.key.drill")]
    ]
    why: [
        qsTrId("help.scales.why.days-apart"),
        qsTrId("help.scales.why.mixed-order"),
        qsTrId("help.scales.why.look-alikes"),
        qsTrId("help.scales.why.fast-clicks")
    ]
    sources: [
        "A. L. Simmons (2012), “Distributed practice and procedural memory consolidation in musicians' skill learning”, Journal of Research in Music Education 59(4), 357–368",
        "L. A. Stambaugh (2011), “When repetition isn't the best practice strategy: effects of blocked and random practice schedules”, Journal of Research in Music Education 58(4), 368–383",
        "Rhode Island College, digitalcollections.ric.edu/record/1990",
        "“Memory stabilization and enhancement following music practice”, Psychology of Music, doi 10.1177/0305735612463947",
        "B. H. Repp (2006), “Rate limits of sensorimotor synchronization”, Advances in Cognitive Psychology 2, 163–181"
    ]
}
