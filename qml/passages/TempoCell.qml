// SPDX-License-Identifier: GPL-3.0-or-later
// A field for a tempo in the form of a passage: typed or tapped.
import QtQuick
import QtQuick.Layouts
import Piolo

Item {
    id: cell

    required property PassageEditor editor
    required property string name
    property string label: ""
    property string placeholder: ""

    signal accepted()

    Layout.fillWidth: true
    Layout.preferredWidth: 1
    Layout.alignment: Qt.AlignTop
    implicitWidth: field.implicitWidth + tap.implicitWidth
    implicitHeight: field.implicitHeight

    FormField {
        id: field
        width: parent.width - tap.width - 8
        editor: cell.editor
        name: cell.name
        label: cell.label
        labelWidth: cell.width
        placeholder: cell.placeholder
        onAccepted: cell.accepted()
    }
    TapButton {
        id: tap
        objectName: "tap-" + cell.name
        anchors.right: parent.right
        y: field.boxY
        height: Theme.touch
        leftPadding: 8
        rightPadding: 8
        implicitWidth: implicitContentWidth + leftPadding + rightPadding
        visible: !cell.editor.readOnly
        text: qsTrId("click.tap")
        Accessible.name: qsTrId("parts.label-value").arg(cell.label).arg(text)
        onTapped: tempo => cell.editor.set(cell.name, tempo)
    }
}
