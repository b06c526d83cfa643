// SPDX-License-Identifier: GPL-3.0-or-later
// Scales: twelve keys by seven subdivisions, the next one to play, the weeks, and the instrument.
import QtQuick
import QtQuick.Layouts
import Piolo

FocusScope {
    id: screen
    objectName: "scalesScreen"

    property ScaleBoard board: PracticeRoom.scales
    /// "grid", "weeks" or "instrument": the requested side, until the player is done.
    property string side: ""

    readonly property bool roomy: height > 640

    signal drillWanted(bool hear)

    onDrillWanted: hear => PracticeRoom.drillScale(hear)

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.margin
        anchors.topMargin: 10
        anchors.bottomMargin: screen.roomy ? Theme.gap : Theme.gap / 2
        spacing: screen.roomy ? Theme.gap : Theme.gap / 2

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            InkText {
                text: qsTrId("scales.title")
                font.pixelSize: Theme.heading
                font.weight: Font.DemiBold
                Accessible.role: Accessible.Heading
            }
            InkText {
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBaseline
                text: screen.side === "grid" ? qsTrId("scales.keys-hint").arg(screen.board.choices.instrumentText) : ""
                color: Theme.faint
                elide: Text.ElideRight
            }
            Pills {
                objectName: "scaleSides"
                Layout.preferredWidth: implicitWidth
                label: qsTrId("scales.shown")
                visible: screen.board.choices.ready
                options: [
                    {value: "grid", text: qsTrId("scales.grid")},
                    {value: "weeks", text: qsTrId("scales.weeks")},
                    {value: "instrument", text: qsTrId("scales.instrument")}
                ]
                value: screen.side
                onChosen: value => screen.side = value
            }
        }
        ScaleView {
            Layout.fillWidth: true
            visible: screen.side === "grid"
            choices: screen.board.choices
        }
        ScaleGrid {
            id: grid
            objectName: "scaleGrid"
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: screen.side === "grid"
            focus: visible
            board: screen.board
            onDrillWanted: hear => screen.drillWanted(hear)
        }
        ScaleCard {
            Layout.fillWidth: true
            visible: screen.side === "grid"
            board: screen.board
            compact: !screen.roomy
            onDrillWanted: hear => screen.drillWanted(hear)
        }
        ScaleWeeks {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: screen.side === "weeks"
            board: screen.board
        }
        ScaleInstrument {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: screen.side === "instrument"
            choices: screen.board.choices
            onDone: screen.side = "grid"
        }
    }
    onSideChanged: if (side === "grid") grid.forceActiveFocus()
    Component.onCompleted: side = board.choices.ready ? "grid" : "instrument"
}
