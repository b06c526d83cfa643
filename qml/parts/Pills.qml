// SPDX-License-Identifier: GPL-3.0-or-later
// One of a few options, all visible.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T

Flow {
    id: pills

    property var options: []
    property var value: undefined
    property string label: ""

    signal chosen(var value)

    spacing: 8
    Accessible.role: Accessible.Grouping
    Accessible.name: label

    Repeater {
        model: pills.options

        T.RadioButton {
            id: pill

            objectName: pills.objectName === "" ? "" : pills.objectName + "-" + modelData.value
            required property var modelData

            implicitWidth: implicitContentWidth
            implicitHeight: Theme.touch
            text: modelData.text
            checked: modelData.value === pills.value
            hoverEnabled: true
            Accessible.role: Accessible.RadioButton
            Accessible.name: text
            Accessible.checked: checked
            onClicked: pills.chosen(modelData.value)

            background: Rectangle {
                radius: height / 2
                color: pill.checked ? Theme.ink : Theme.card
                border.color: pill.visualFocus ? Theme.focus : Theme.faint
                border.width: pill.visualFocus ? 3 : 1
            }
            contentItem: InkText {
                leftPadding: 16
                rightPadding: 16
                verticalAlignment: Text.AlignVCenter
                text: pill.text
                color: pill.checked ? Theme.paper : Theme.ink
                Accessible.ignored: true
            }
        }
    }
}
