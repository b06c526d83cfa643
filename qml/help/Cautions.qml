// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions, shown at the first start and in the help.
import QtQuick

Chapter {
    mark: "!"
    title: qsTrId("care.title")
    border.color: Theme.miss
    lines: [
        qsTrId("care.pain"),
        qsTrId("care.gradually"),
        qsTrId("care.rest"),
        qsTrId("care.headphones"),
        qsTrId("care.authority")
    ]
}
