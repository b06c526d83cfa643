// SPDX-License-Identifier: GPL-3.0-or-later
// The drill has paused and asks.
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
                text: panel.asksClean ? qsTr("Were these runs clean?")
                      : panel.drill.pauseKind === DrillModel.ThreeMisses ? qsTr("Three misses without a clean run")
                                                                        : qsTr("Two steps down from the start")
                Accessible.role: Accessible.Heading
            }
            InkText {
                Layout.fillWidth: true
                wrapMode: Text.WordWrap
                font.pixelSize: Theme.body * 1.2
                text: panel.asksClean
                      ? qsTr("%n runs went by without a key. If you were not listening to every note, say no: they count for nothing and their climbs are taken back.", "", panel.drill.unheardRuns)
                      : qsTr("Make it easier for a while: a shorter stretch, a slower tempo, or a rest. It is no use to practise the mistake.")
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
                    text: panel.asksClean ? qsTr("Yes, go on") : qsTr("Go on as it is")
                    key: panel.keys.markKeys
                    onClicked: panel.drill.goOn()
                }
                InkButton {
                    objectName: "doubt"
                    visible: panel.asksClean
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    text: qsTr("No")
                    key: panel.keys.backKeys
                    onClicked: panel.drill.doubt()
                }
                InkButton {
                    visible: !panel.asksClean && !panel.drill.apart
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    text: qsTr("Half tempo: %1").arg(panel.drill.halfTempoText)
                    key: panel.keys.slowerKeys
                    onClicked: panel.drill.halveTempo()
                }
                InkButton {
                    visible: !panel.asksClean
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    text: qsTr("Fewer bars")
                    onClicked: panel.drill.wantShorter()
                }
                InkButton {
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: 84
                    size: 22
                    text: panel.asksClean ? qsTr("Stop") : qsTr("A rest")
                    key: panel.keys.stopKeys
                    onClicked: panel.drill.stop()
                }
            }
        }
    }
}
