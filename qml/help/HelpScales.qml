// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "scales"
    title: qsTr("Scales")
    purpose: [
        qsTr("One kind of scale in all twelve keys, and each key from quarters to septuplets. Every cell shows its best tempo with a full row; an empty one has not been played yet. A cell is drilled like any passage."),
        qsTr("One cell is proposed as the next, with its reason: of those not played today the one played longest ago, when that is a week or more; else one that was never played; else the one furthest below the best of its row. You decide."),
        qsTr("A new cell starts from the best of its nearest neighbour, two notches down. Its end is arranged so that the last note falls on a beat; the card says how.")
    ]
    keys: [
        [qsTr("Arrow keys"), qsTr("from cell to cell")],
        [qsTr("Home"), qsTr("the cell that is proposed")],
        [qsTr("Return, Space"), qsTr("drill the cell")]
    ]
    why: [
        qsTr("Days apart help: of twenty-nine musicians learning nine notes on a keyboard only those who came back after a day, not after minutes or hours, were more accurate the second time (Simmons 2012)."),
        qsTr("Mixed order can help later: forty-one beginners on the clarinet ended their practice alike, and a day later those who had practised in mixed order were faster, though no more accurate (Stambaugh 2011). One session with nineteen beginners on clarinet and saxophone showed no effect of the order (a study at Rhode Island College). So the mix is an offer."),
        qsTr("Look-alikes last in the evening may cost: a second, similar melody took away the gain of the night in one study with sixty musicians."),
        qsTr("Nobody keeps in step with single clicks faster than about eight to ten a second (Repp 2006): in small notes follow the beat.")
    ]
    sources: [
        "A. L. Simmons (2012), “Distributed practice and procedural memory consolidation in musicians' skill learning”, Journal of Research in Music Education 59(4), 357–368",
        "L. A. Stambaugh (2011), “When repetition isn't the best practice strategy: effects of blocked and random practice schedules”, Journal of Research in Music Education 58(4), 368–383",
        "Rhode Island College, digitalcollections.ric.edu/record/1990",
        "“Memory stabilization and enhancement following music practice”, Psychology of Music, doi 10.1177/0305735612463947",
        "B. H. Repp (2006), “Rate limits of sensorimotor synchronization”, Advances in Cognitive Psychology 2, 163–181"
    ]
}
