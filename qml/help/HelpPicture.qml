// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    purpose: [
        qsTrId("help.picture.what.add")
    ]
    keys: [
        [qsTrId("help.picture.key.move.keys"), qsTrId("help.picture.key.move")],
        [qsTrId("help.picture.key.edge.keys"), qsTrId("help.picture.key.edge")],
        [qsTrId("help.picture.key.scroll.keys"), qsTrId("help.picture.key.scroll")],
        [qsTrId("help.picture.key.leave.keys"), qsTrId("help.picture.key.leave")]
    ]
    why: [
        qsTrId("help.picture.why.eyes")
    ]
}
