// SPDX-License-Identifier: GPL-3.0-or-later
// The runs of a line, one by one. One that was marked by mistake can be taken back, after one question.
// Qt 6.4's linter does not see the ids around a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: list

    property var entries: []
    property bool changeable: true
    /// The entry about which the question stands; "": none.
    property string asked: ""

    signal takenBack(string passage, string entry)

    bottomPadding: 8

    Repeater {
        model: list.entries

        Column {
            id: entry

            required property var modelData

            readonly property bool asking: list.asked === modelData.entry

            width: list.width

            Item {
                width: parent.width
                implicitHeight: Theme.touch

                Words {
                    id: when
                    anchors.verticalCenter: parent.verticalCenter
                    text: entry.modelData.time
                    color: Theme.faint
                }
                MarkRow {
                    id: shape
                    anchors.left: when.right
                    anchors.leftMargin: 12
                    anchors.verticalCenter: parent.verticalCenter
                    width: 20
                    marks: entry.modelData.marks
                }
                Words {
                    anchors.left: shape.right
                    anchors.leftMargin: 8
                    anchors.right: away.left
                    anchors.rightMargin: 12
                    anchors.verticalCenter: parent.verticalCenter
                    elide: Text.ElideRight
                    text: entry.modelData.mark === "" ? entry.modelData.detail
                          : qsTr("%1 · %2").arg(entry.modelData.mark).arg(entry.modelData.detail)
                }
                InkButton {
                    id: away
                    objectName: "takeEntryBack"
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    implicitHeight: 36
                    visible: list.changeable && !entry.asking
                    text: qsTr("Take back…")
                    Accessible.name: qsTr("Take back the entry of %1").arg(entry.modelData.time)
                    onClicked: {
                        list.asked = entry.modelData.entry;
                        keep.forceActiveFocus(Qt.TabFocusReason);
                    }
                }
            }
            Flow {
                width: parent.width
                visible: entry.asking
                spacing: 12
                bottomPadding: 8

                Words {
                    height: Theme.touch
                    verticalAlignment: Text.AlignVCenter
                    text: qsTr("It will count as never played, and cannot be brought back.")
                }
                InkButton {
                    id: keep
                    objectName: "keepEntry"
                    text: qsTr("Leave it")
                    onClicked: list.asked = ""
                }
                InkButton {
                    objectName: "takeEntryBackNow"
                    text: qsTr("Take it back")
                    ink: Theme.miss
                    line: Theme.miss
                    onClicked: list.takenBack(entry.modelData.passage, entry.modelData.entry)
                }
            }
        }
    }
}
