// SPDX-License-Identifier: GPL-3.0-or-later
// One key of an action; a press removes it.
import QtQuick

InkButton {
    id: chip

    property string words: ""

    text: qsTrId("keys.chip").arg(words)
    Accessible.name: qsTrId("keys.chip.remove").arg(words)
}
