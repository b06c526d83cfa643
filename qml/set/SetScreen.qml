// SPDX-License-Identifier: GPL-3.0-or-later
// In turn: which passages, how long each, and start.
import QtQuick
import QtQuick.Layouts
import Piolo

FocusScope {
    id: screen

    property SetModel set: PracticeRoom.set
    property KeyBindings keys: PracticeRoom.keys

    readonly property bool slim: width < 640

    signal startWanted()
    signal backWanted()

    onStartWanted: PracticeRoom.startSet()
    onBackWanted: PracticeRoom.screen = "passages"

    ColumnLayout {
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.topMargin: Theme.gap
        anchors.bottomMargin: Theme.gap
        width: Math.min(parent.width - 2 * Theme.margin, 760)
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap

            InkButton {
                objectName: "wayBack"
                text: qsTrId("nav.passages")
                mark: "‹"
                Accessible.name: qsTrId("drill.way-back").arg(text)
                onClicked: screen.backWanted()
            }
            InkText {
                Layout.fillWidth: true
                text: qsTrId("set.title")
                font.pixelSize: Theme.heading
                font.weight: Font.DemiBold
                elide: Text.ElideRight
                Accessible.role: Accessible.Heading
            }
        }
        SetList {
            Layout.fillWidth: true
            Layout.fillHeight: true
            set: screen.set
        }
        InkText {
            Layout.fillWidth: true
            visible: text !== ""
            text: screen.set.picks.refused ? qsTrId("set.full") : screen.set.ready ? "" : qsTrId("set.few")
            color: screen.set.picks.refused ? Theme.miss : Theme.faint
            wrapMode: Text.Wrap
        }
        GridLayout {
            columns: screen.slim ? 1 : 2
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap

            SetLength {
                Layout.fillWidth: true
                set: screen.set
            }
            InkButton {
                objectName: "startSet"
                Layout.fillWidth: screen.slim
                Layout.preferredWidth: screen.slim ? -1 : 220
                Layout.preferredHeight: 64
                strong: true
                size: 20
                text: qsTrId("drill.start")
                key: screen.keys.shown.mark
                enabled: screen.set.ready
                onClicked: screen.startWanted()
            }
        }
    }
}
