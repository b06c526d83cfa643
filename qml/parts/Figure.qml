// SPDX-License-Identifier: GPL-3.0-or-later
// A figure and what it counts.
import QtQuick

Item {
    id: figure

    property string label: ""
    property string value: ""

    implicitHeight: Math.max(name.implicitHeight, amount.implicitHeight)
    implicitWidth: name.implicitWidth + amount.implicitWidth + Theme.gap
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTrId("parts.label-value").arg(label).arg(value)

    InkText {
        id: name
        anchors.left: parent.left
        anchors.right: amount.left
        anchors.rightMargin: 8
        elide: Text.ElideRight
        text: figure.label
        color: Theme.faint
        Accessible.ignored: true
    }
    InkText {
        id: amount
        anchors.right: parent.right
        text: figure.value
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
}
