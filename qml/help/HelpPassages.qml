// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    purpose: [
        qsTrId("help.passages.what.list"),
        qsTrId("help.passages.what.form"),
        qsTrId("help.passages.what.gentle")
    ]
    keys: [
        [qsTrId("help.passages.key.list.keys"), qsTrId("help.passages.key.list")],
        [bound.shown.save, qsTrId("help.passages.key.save")]
    ]
    why: [
        qsTrId("help.passages.why.short"),
        qsTrId("help.passages.why.about-runs")
    ]
}
