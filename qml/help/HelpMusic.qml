// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    purpose: [
        qsTrId("help.score.what.reads"),
        qsTrId("help.score.what.where")
    ]
    why: [
        qsTrId("help.score.why.model"),
        qsTrId("help.score.why.straight")
    ]
    sources: ["Henley (2001), “Effects of modeling and tempo patterns as practice techniques on the performance of high school instrumentalists”, Journal of Research in Music Education, doi 10.2307/3345868"]
}
