// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "music"
    title: qsTr("A passage from a music file")
    purpose: [
        qsTr("Reads a score in MusicXML, shows its parts, and takes the bars that you pick: their meter, their tempo mark, and their notes, so that the passage can be heard first."),
        qsTr("Type where the file is, or drop it on the card.")
    ]
    why: [
        qsTr("School wind players who heard a model did better in rhythm and gained more tempo, in whatever order they practised their tempi (Henley 2001)."),
        qsTr("Bars with a repeat inside, or with a change of meter, are refused rather than guessed: a passage is played straight through.")
    ]
    sources: ["Henley (2001), “Effects of modeling and tempo patterns as practice techniques on the performance of high school instrumentalists”, Journal of Research in Music Education, doi 10.2307/3345868"]
}
