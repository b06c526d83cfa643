// SPDX-License-Identifier: GPL-3.0-or-later
// The passages that went worst of late, worst first. Choosing one shows only it; choosing it again shows all.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

Column {
    id: list

    required property LogModel log

    readonly property var passages: log.figures.worst
    readonly property int columns: width >= 820 ? Math.max(2, passages.length) : width >= 640 ? 2 : 1

    visible: passages.length > 0
    spacing: 6

    InkText {
        text: qsTrId("log.worst.title")
        color: Theme.faint
        font.pixelSize: Theme.small
        Accessible.role: Accessible.Heading
    }
    Grid {
        width: parent.width
        columns: list.columns
        spacing: 8

        Repeater {
            model: list.passages

            T.AbstractButton {
                id: passage
                objectName: "worst-" + index

                required property int index
                required property var modelData

                width: (list.width - (list.columns - 1) * 8) / list.columns
                implicitHeight: 52
                checked: list.log.passage === modelData.passage
                hoverEnabled: true
                Accessible.role: Accessible.CheckBox
                Accessible.name: modelData.spoken
                Accessible.checked: checked
                Keys.onReturnPressed: clicked()
                Keys.onEnterPressed: clicked()
                onClicked: list.log.passage = checked ? "" : modelData.passage

                background: Rectangle {
                    radius: 8
                    color: passage.checked ? Theme.accentWash : Theme.card
                    border.color: passage.visualFocus ? Theme.focus : passage.hovered ? Theme.ink : Theme.edge
                    border.width: passage.visualFocus ? 3 : passage.hovered ? 2 : 1
                }
                contentItem: Item {
                    InkText {
                        x: 12
                        y: 6
                        width: parent.width - 24
                        text: passage.modelData.title
                        font.weight: Font.DemiBold
                        elide: Text.ElideMiddle
                        Accessible.ignored: true
                    }
                    InkText {
                        x: 12
                        y: 28
                        width: parent.width - 24
                        text: passage.modelData.why
                        color: passage.checked ? Theme.ink : Theme.faint
                        font.pixelSize: Theme.small
                        elide: Text.ElideRight
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
}
