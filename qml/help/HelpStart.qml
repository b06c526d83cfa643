// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    purpose: [
        qsTrId("help.start.what.piolo"),
        qsTrId("help.start.what.stages")
    ]
    keys: [
        ["F1", qsTrId("help.start.key.help")],
        [qsTrId("help.start.key.control.keys"), qsTrId("help.start.key.control")],
        [qsTrId("help.start.key.press.keys"), qsTrId("help.start.key.press")]
    ]
    why: [
        qsTrId("help.start.why.few-misses"),
        qsTrId("help.start.why.slow")
    ]
    sources: [
        "R. A. Duke, A. L. Simmons, C. D. Cash (2009), “It's not how much; it's how: characteristics of practice behavior and retention of performance skills”, Journal of Research in Music Education 56(4), 310–321",
        "E. Allingham, C. Wöllner (2022), “Slow practice and tempo-management strategies in instrumental music learning”, Psychology of Music, doi 10.1177/03057356211073481",
        "E. Allingham, C. Wöllner (2023), “Putting practice under the microscope: the perceived uses and limitations of slow instrumental music practice”, Psychology of Music, doi 10.1177/03057356221129650"
    ]
}
