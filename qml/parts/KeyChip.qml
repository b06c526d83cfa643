// SPDX-License-Identifier: GPL-3.0-or-later
// One key of an action; a press takes it away.
import QtQuick

InkButton {
    id: chip

    property string words: ""

    implicitHeight: 36
    text: qsTr("%1  ✕").arg(words)
    Accessible.name: qsTr("Take %1 away").arg(words)
}
