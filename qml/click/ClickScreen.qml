// SPDX-License-Identifier: GPL-3.0-or-later
// Just a click, without a passage: its beats, its tempo between rungs, and what it is counted in.
import QtQuick
import QtQuick.Layouts
import Piolo

FocusScope {
    id: screen

    property ClickModel click: PracticeRoom.click
    property KeyBindings keys: PracticeRoom.keys

    /// The ladder is beside the other controls.
    readonly property bool wide: width >= 860
    readonly property real inner: Math.min(width - 2 * Theme.margin, 1400)
    /// What is left for the figure and the beats when all else has its place.
    readonly property real spare: height - (wide ? 350 : 445)

    /// As high as the ladder allows beside it.
    readonly property real buttonHeight: wide ? Math.max(96, ladder.height - 66 - 2 * Theme.gap) : 72

    signal keepWanted()

    focus: true
    onKeepWanted: PracticeRoom.keepClick()

    // Has the focus while no control was chosen: the click's keys do not need it.
    Item {
        id: ground
        focus: true
    }
    ScrollColumn {
        x: (parent.width - screen.inner) / 2
        width: screen.inner + 16
        height: parent.height
        topMargin: screen.wide ? Theme.gap : 8
        bottomMargin: 8
        spacing: screen.wide ? Theme.gap : 8

        RowLayout {
            width: parent.width
            spacing: Theme.gap

            InkText {
                Layout.fillWidth: true
                text: qsTrId("click.title")
                font.pixelSize: Theme.heading
                font.weight: Font.DemiBold
                elide: Text.ElideRight
                Accessible.role: Accessible.Heading
            }
            InkText {
                visible: screen.wide
                text: qsTrId("click.not-logged")
                color: Theme.faint
            }
            InkButton {
                objectName: "clickKeep"
                text: qsTrId("click.keep")
                onClicked: screen.keepWanted()
            }
        }
        BeatRow {
            objectName: "clickBeats"
            width: parent.width
            beats: screen.click.beats
            cellHeight: Math.max(56, Math.min(200, screen.spare * (screen.wide ? 0.45 : 0.4))) / rows
        }
        GridLayout {
            width: parent.width
            columns: screen.wide ? 2 : 1
            columnSpacing: Theme.margin
            rowSpacing: parent.spacing

            ClickLadder {
                id: ladder
                Layout.fillWidth: true
                Layout.preferredWidth: 5
                click: screen.click
                figureHeight: Math.max(72, Math.min(320, screen.spare * (screen.wide ? 0.8 : 0.55)))
                onDone: ground.forceActiveFocus()
            }
            ColumnLayout {
                Layout.fillWidth: true
                Layout.preferredWidth: 4
                Layout.alignment: Qt.AlignTop
                spacing: screen.wide ? Theme.gap : 8

                RowLayout {
                    Layout.fillWidth: true
                    spacing: Theme.gap

                    InkButton {
                        objectName: "clickStart"
                        Layout.fillWidth: true
                        Layout.preferredWidth: 1
                        Layout.preferredHeight: screen.buttonHeight
                        text: screen.click.sounds ? qsTrId("playing.stop") : qsTrId("drill.start")
                        mark: screen.click.sounds ? "■" : "▶"
                        key: screen.click.sounds ? screen.keys.shown.stop : screen.keys.shown.mark
                        strong: true
                        size: 24
                        onClicked: screen.click.toggle()
                    }
                    TapButton {
                        objectName: "clickTap"
                        Layout.fillWidth: true
                        Layout.preferredWidth: 1
                        Layout.preferredHeight: screen.buttonHeight
                        text: qsTrId("click.tap")
                        key: screen.keys.shown.tap
                        size: 24
                        onBeaten: stamp => screen.click.tapAt(stamp)
                    }
                }
                RowLayout {
                    Layout.fillWidth: true
                    spacing: Theme.gap

                    Choice {
                        objectName: "clickMeter"
                        Layout.fillWidth: true
                        Layout.preferredWidth: 1
                        label: qsTrId("welcome.meter")
                        options: screen.click.meters
                        value: screen.click.meter
                        onChosen: value => screen.click.meter = value
                    }
                    Choice {
                        objectName: "clickSubdivision"
                        Layout.fillWidth: true
                        Layout.preferredWidth: 1
                        label: qsTrId("welcome.subdivision")
                        options: screen.click.subdivisions
                        value: screen.click.subdivision
                        onChosen: value => screen.click.subdivision = value
                    }
                }
            }
        }
    }
}
