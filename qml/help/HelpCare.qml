// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "care"
    title: qsTr("Take care of yourself")
    careful: true
    why: [
        qsTr("Of 442 music students without a complaint from playing about half had one within a year; fatigue and a change in how active they were raised the risk (Cruder and others 2023)."),
        qsTr("Of forty students about half would have passed a day's dose of sound by their own practice alone (Phillips and Mace 2008)."),
        qsTr("Breaks, a warm-up, a daily limit and no sudden increase are what a sheet for students of two professional bodies advises (NASM and PAMA).")
    ]
    sources: [
        "C. Cruder, E. Soldini, N. Gleeson, M. Barbero (2023), “Factors associated with increased risk of playing-related disorders among classical music students”, Scientific Reports, doi 10.1038/s41598-023-49965-7",
        "S. L. Phillips, S. Mace (2008), “Sound level measurements in music practice rooms”, Music Performance Research 2, 36–47",
        "NASM, PAMA, sheet for students on neuromusculoskeletal health"
    ]
}
