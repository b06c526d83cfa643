// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Piolo

HelpChapter {
    purpose: [
        qsTrId("help.click.what.free"),
        qsTrId("help.click.what.goes-on")
    ]
    keys: [
        [bound.shown.mark, qsTrId("help.click.key.start")],
        [bound.shown.tap, qsTrId("help.click.key.tap")],
        [bound.shown.faster, qsTrId("help.click.key.faster")],
        [bound.shown.slower, qsTrId("help.click.key.slower")],
        [bound.shown.click, qsTrId("help.click.key.open")]
    ]
    why: [
        qsTrId("help.click.why.taps")
    ]
}
