// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    careful: true
    why: [
        qsTrId("help.care.why.complaints"),
        qsTrId("help.care.why.loudness"),
        qsTrId("help.care.why.breaks")
    ]
    sources: [
        "C. Cruder, E. Soldini, N. Gleeson, M. Barbero (2023), “Factors associated with increased risk of playing-related disorders among classical music students”, Scientific Reports, doi 10.1038/s41598-023-49965-7",
        "S. L. Phillips, S. Mace (2008), “Sound level measurements in music practice rooms”, Music Performance Research 2, 36–47",
        "NASM, PAMA, sheet for students on neuromusculoskeletal health"
    ]
}
