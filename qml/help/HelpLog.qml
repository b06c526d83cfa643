// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    purpose: [
        qsTrId("help.log.what.everything"),
        qsTrId("help.log.what.worst"),
        qsTrId("help.log.what.curve"),
        qsTrId("help.log.what.folder")
    ]
    keys: [
        [bound.shown.stretch, qsTrId("help.log.key.breaks")],
        [qsTrId("help.log.key.zoom.keys"), qsTrId("help.log.key.zoom")],
        [qsTrId("help.log.key.along.keys"), qsTrId("help.log.key.along")],
        [qsTrId("help.log.key.along.keys"), qsTrId("help.log.key.day")],
        [qsTrId("help.log.key.line.keys"), qsTrId("help.log.key.line")],
        [qsTrId("help.log.key.days.keys"), qsTrId("help.log.key.days")]
    ]
    why: [
        qsTrId("help.log.why.reaction"),
        qsTrId("help.log.why.days-apart")
    ]
    sources: [
        "A. L. Simmons (2012), “Distributed practice and procedural memory consolidation in musicians' skill learning”, Journal of Research in Music Education 59(4), 357–368",
        "M. Wiseheart, A. A. D'Souza, J. Chae (2017), “Lack of spacing effects during piano learning”, PLOS ONE, doi 10.1371/journal.pone.0182986"
    ]
}
