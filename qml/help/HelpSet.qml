// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    purpose: [
        qsTrId("help.set.what.turns"),
        qsTrId("help.set.what.tones"),
        qsTrId("help.set.what.marks"),
        qsTrId("help.set.what.stop")
    ]
    keys: [
        [bound.shown.mark, qsTrId("help.set.key.mark")],
        [bound.shown.back, qsTrId("help.drill.key.take-back")],
        [bound.shown.stop, qsTrId("help.drill.key.stop")]
    ]
    why: [
        qsTrId("help.set.why.studies"),
        qsTrId("help.set.why.tomorrow")
    ]
    sources: [
        "C. E. Carter, J. A. Grahn (2016), “Optimizing music learning: exploring how blocked and interleaved practice schedules affect advanced performance”, Frontiers in Psychology 7, 1251",
        "L. A. Stambaugh (2011), “When repetition isn't the best practice strategy: effects of blocked and random practice schedules”, Journal of Research in Music Education 58(4), 368–383",
        "Rhode Island College, digitalcollections.ric.edu/record/1990"
    ]
}
