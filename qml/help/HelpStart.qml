// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "start"
    title: qsTr("From slow to the whole piece")
    purpose: [
        qsTr("Piolo gets a hard passage clean. Choose a tempo at which nothing goes wrong, play it again and again, and touch one key, and only for a miss: the tempo follows how cleanly you play."),
        qsTr("A passage goes through five stages: slow with the click, secure at the target, without the click, in its context with two bars on either side, and in run-throughs of the piece. When the log speaks for the next stage the drill says why; you decide, and may go back.")
    ]
    keys: [
        ["F1", qsTr("help for the screen you are on, while the click is still")],
        [qsTr("Tab, Shift+Tab"), qsTr("from one control to the next, and back")],
        [qsTr("Return, Space"), qsTr("press the control")]
    ]
    why: [
        qsTr("How well a passage was kept overnight went with how few repetitions were wrong, not with how long or how often it was played: seventeen pianists on three bars (Duke, Simmons and Cash 2009). So misses are kept few, and what counts is clean runs, not minutes."),
        qsTr("Nearly every player reports slow practice (Allingham and Wöllner 2022): that says what is usual, not what works. Players also see its pitfalls, such as movements that differ from fast ones (2023). So a try at the target is always at hand.")
    ]
    sources: [
        "R. A. Duke, A. L. Simmons, C. D. Cash (2009), “It's not how much; it's how: characteristics of practice behavior and retention of performance skills”, Journal of Research in Music Education 56(4), 310–321",
        "E. Allingham, C. Wöllner (2022), “Slow practice and tempo-management strategies in instrumental music learning”, Psychology of Music, doi 10.1177/03057356211073481",
        "E. Allingham, C. Wöllner (2023), “Putting practice under the microscope: the perceived uses and limitations of slow instrumental music practice”, Psychology of Music, doi 10.1177/03057356221129650"
    ]
}
