// SPDX-License-Identifier: GPL-3.0-or-later
// Scales: twelve keys by seven subdivisions, the next one to play, the weeks, and the instrument.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Piolo

FocusScope {
    id: screen
    objectName: "scalesScreen"

    property ScaleBoard board: PracticeRoom.scales
    /// "grid", "weeks" or "instrument": the requested side, until the player is done.
    property string side: ""

    readonly property bool roomy: height > 640
    readonly property bool slim: width < 700

    signal drillWanted(bool hear)

    onDrillWanted: hear => PracticeRoom.drillScale(hear)

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.margin
        anchors.topMargin: screen.roomy ? 10 : 6
        anchors.bottomMargin: screen.roomy ? Theme.gap : Theme.gap / 2
        spacing: screen.roomy ? Theme.gap : 6

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            InkText {
                text: qsTrId("scales.title")
                font.pixelSize: screen.slim ? 20 : Theme.heading
                font.weight: Font.DemiBold
                Accessible.role: Accessible.Heading
            }
            InkText {
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBaseline
                text: screen.side === "grid" && !screen.slim ? qsTrId("scales.keys-hint").arg(screen.board.choices.instrumentText) : ""
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
        Item {
            id: area
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: screen.side === "grid"

            Flickable {
                id: scroll
                anchors.fill: parent
                contentWidth: width
                contentHeight: grid.y + grid.height
                boundsBehavior: Flickable.StopAtBounds
                clip: contentHeight > height
                // What is said of another cell may take more room.
                onHeightChanged: grid.showChosen()

                function show(top, bottom) {
                    const lowest = Math.max(0, contentHeight - height);
                    if (grid.y + top < contentY)
                        contentY = Math.max(0, grid.y + top - grid.head);
                    else if (grid.y + bottom > contentY + height)
                        contentY = Math.min(lowest, grid.y + bottom + grid.gap - height);
                }

                T.ScrollBar.vertical: ScrollMark {
                    parent: area
                    x: area.width + 2
                    height: area.height
                }

                ScaleView {
                    id: view
                    width: parent.width
                    choices: screen.board.choices
                }
                ScaleGrid {
                    id: grid
                    objectName: "scaleGrid"
                    y: view.height + (screen.roomy ? Theme.gap : 6)
                    width: parent.width
                    height: implicitHeight
                    room: area.height - y
                    focus: area.visible
                    board: screen.board
                    onDrillWanted: hear => screen.drillWanted(hear)
                    onChosenAt: (top, bottom) => scroll.show(top, bottom)
                }
            }
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
