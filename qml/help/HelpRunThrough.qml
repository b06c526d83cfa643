// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    purpose: [
        qsTrId("help.run-through.what.whole")
    ]
    keys: [
        [bound.shown.mark, qsTrId("help.run-through.key.start")],
        [bound.shown.clean, qsTrId("help.run-through.key.end")],
        [bound.shown.back, qsTrId("help.run-through.key.take-back")],
        [bound.shown.stop, qsTrId("help.run-through.key.give-up")]
    ]
    why: [
        qsTrId("help.run-through.why.hides"),
        qsTrId("help.run-through.why.kept")
    ]
}
