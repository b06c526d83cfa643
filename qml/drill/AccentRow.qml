// SPDX-License-Identifier: GPL-3.0-or-later
// The accent of each beat as bars of four heights: a press selects the next one.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

Column {
    id: row

    required property PassageEditor editor
    readonly property var accents: editor.choices.accents

    spacing: 4

    InkText {
        text: qsTrId("accents.title")
        color: Theme.faint
        font.pixelSize: Theme.small
        Accessible.ignored: true
    }
    Flow {
        width: parent.width
        spacing: 8

        Repeater {
            model: row.accents.length

            T.Button {
                id: beat

                required property int index
                readonly property var accent: row.accents[index] ?? {value: 2, text: ""}
                readonly property real share: [1, 0.66, 0.33, 0][accent.value]

                objectName: "accent-" + index
                implicitWidth: Theme.touch
                implicitHeight: Theme.touch + 12
                enabled: !row.editor.readOnly
                hoverEnabled: true
                Accessible.role: Accessible.Button
                Accessible.name: accent.text
                onClicked: row.editor.turnAccent(index)

                background: Rectangle {
                    radius: 8
                    color: beat.down ? Theme.accentWash : Theme.card
                    border.color: beat.visualFocus ? Theme.focus : beat.hovered ? Theme.ink : Theme.faint
                    border.width: beat.visualFocus ? 3 : 1
                }
                contentItem: Item {
                    Rectangle {
                        anchors.horizontalCenter: parent.horizontalCenter
                        y: 30 - height
                        width: 16
                        height: Math.max(2, 24 * beat.share)
                        color: beat.share > 0 ? Theme.ink : Theme.faint
                    }
                    InkText {
                        anchors.horizontalCenter: parent.horizontalCenter
                        y: 34
                        text: beat.index + 1
                        color: Theme.faint
                        font.pixelSize: Theme.small
                        Accessible.ignored: true
                    }
                }
            }
        }
        InkButton {
            objectName: "usualAccents"
            visible: (row.editor.draft["accents"] ?? "") !== "" && !row.editor.readOnly
            text: qsTrId("accents.from-meter")
            onClicked: row.editor.set("accents", "")
        }
    }
}
