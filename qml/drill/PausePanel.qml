// SPDX-License-Identifier: GPL-3.0-or-later
// The drill has paused and asks a question.
import QtQuick
import QtQuick.Layouts
import Piolo

Rectangle {
    id: panel

    required property DrillModel drill
    required property KeyBindings keys

    readonly property bool asksClean: drill.pauseKind === DrillModel.NoKey

    color: Theme.paper
    Accessible.role: Accessible.Dialog
    Accessible.name: title.text

    Card {
        anchors.centerIn: parent
        width: Math.min(panel.width - 4 * Theme.gap, 760)
        height: content.implicitHeight + 4 * Theme.gap

        ColumnLayout {
            id: content
            anchors.fill: parent
            anchors.margins: 2 * Theme.gap
            spacing: Theme.gap

            InkText {
                id: title
                Layout.fillWidth: true
                wrapMode: Text.WordWrap
                font.pixelSize: Theme.heading * 1.3
                font.weight: Font.DemiBold
                text: panel.asksClean ? qsTrId("pause.unmarked.title")
                      : panel.drill.pauseKind === DrillModel.ThreeMisses ? qsTrId("pause.misses.title")
                                                                        : qsTrId("pause.drops.title")
                Accessible.role: Accessible.Heading
            }
            InkText {
                Layout.fillWidth: true
                wrapMode: Text.WordWrap
                font.pixelSize: Theme.body * 1.2
                text: panel.asksClean
                      ? qsTrId("pause.unmarked", panel.drill.unheardRuns)
                      : qsTrId("pause.easier")
            }
            GridLayout {
                Layout.fillWidth: true
                Layout.topMargin: Theme.gap
                columns: 2
                columnSpacing: 12
                rowSpacing: 12

                InkButton {
                    objectName: "goOn"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    strong: panel.asksClean
                    text: panel.asksClean ? qsTrId("pause.yes") : qsTrId("pause.go-on")
                    key: panel.keys.shown.mark
                    onClicked: panel.drill.goOn()
                }
                InkButton {
                    objectName: "doubt"
                    visible: panel.asksClean
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    text: qsTrId("pause.no")
                    key: panel.keys.shown.back
                    onClicked: panel.drill.doubt()
                }
                InkButton {
                    visible: !panel.asksClean && !panel.drill.apart
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    text: qsTrId("pause.half-tempo").arg(panel.drill.text.halfTempo)
                    key: panel.keys.shown.slower
                    onClicked: panel.drill.halveTempo()
                }
                InkButton {
                    visible: !panel.asksClean
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    text: qsTrId("pause.fewer-bars")
                    onClicked: panel.drill.wantShorter()
                }
                InkButton {
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    text: panel.asksClean ? qsTrId("pause.stop") : qsTrId("pause.rest")
                    key: panel.keys.shown.stop
                    onClicked: panel.drill.stop()
                }
            }
        }
    }
}
