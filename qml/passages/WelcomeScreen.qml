// SPDX-License-Identifier: GPL-3.0-or-later
// The first start: a first passage in under a minute, a pedal if there is one, and the cautions.
import QtQuick
import QtQuick.Layouts
import Piolo

FocusScope {
    id: screen

    property PassageEditor editor: PracticeRoom.editor
    property KeyBindings keys: PracticeRoom.keys
    property SettingsModel settings: PracticeRoom.settings

    signal drillRequested(string passage)
    /// Bars of a score instead of this form.
    signal scoreRequested()

    function begin() {
        const passage = editor.save();
        if (passage === "")
            return;
        settings.welcomed = true;
        drillRequested(passage);
    }

    onDrillRequested: passage => PracticeRoom.openDrill(passage)
    onScoreRequested: PracticeRoom.openScore()

    ScrollColumn {
        x: Theme.margin
        width: parent.width - Theme.margin - Theme.gap
        height: parent.height
        spacing: Theme.gap
        topMargin: 16
        bottomMargin: 24

        RowLayout {
            width: parent.width
            spacing: Theme.gap

            InkText {
                Layout.fillWidth: true
                text: qsTrId("welcome.title")
                font.pixelSize: Theme.heading
                font.weight: Font.DemiBold
                wrapMode: Text.Wrap
                Accessible.role: Accessible.Heading
            }
            InkButton {
                objectName: "justAClick"
                text: qsTrId("click.title")
                key: screen.keys.shown.click
                onClicked: PracticeRoom.openClick()
            }
        }
        InkText {
            width: parent.width
            text: qsTrId("welcome.hint")
            color: Theme.faint
            wrapMode: Text.Wrap
        }
        Flow {
            id: columns
            width: parent.width
            spacing: Theme.gap

            readonly property bool single: width < 760

            Column {
                width: columns.single ? columns.width : Math.floor((columns.width - columns.spacing) * 0.56)
                spacing: Theme.gap

                SettingsCard {
                    width: parent.width
                    title: qsTrId("welcome.passage")

                    GridLayout {
                        width: parent.width
                        columns: width < 480 ? 2 : 3
                        columnSpacing: Theme.gap
                        rowSpacing: Theme.gap

                        FormCell {
                            editor: screen.editor
                            id: name
                            Layout.columnSpan: parent.columns
                            Layout.preferredWidth: 3
                            focus: true
                            name: "title"
                            label: qsTrId("welcome.name")
                            onAccepted: screen.begin()
                            placeholder: screen.editor.text.usualTitle
                        }
                        FormCell {
                            editor: screen.editor
                            name: "firstBar"
                            label: qsTrId("welcome.first-bar")
                            onAccepted: screen.begin()
                        }
                        FormCell {
                            editor: screen.editor
                            name: "bars"
                            label: qsTrId("welcome.bars")
                            onAccepted: screen.begin()
                        }
                        FormCell {
                            editor: screen.editor
                            name: "meter"
                            label: qsTrId("welcome.meter")
                            onAccepted: screen.begin()
                        }
                        TempoCell {
                            editor: screen.editor
                            name: "start"
                            label: qsTrId("welcome.start")
                            onAccepted: screen.begin()
                        }
                        TempoCell {
                            editor: screen.editor
                            name: "target"
                            label: qsTrId("welcome.target")
                            onAccepted: screen.begin()
                        }
                        Choice {
                            Layout.fillWidth: true
                            Layout.preferredWidth: 1
                            Layout.alignment: Qt.AlignTop
                            label: qsTrId("welcome.subdivision")
                            options: screen.editor.choices.subdivisions
                            value: screen.editor.draft["subdivision"]
                            onChosen: value => screen.editor.set("subdivision", value)
                        }
                    }
                    RuleNote {
                        width: parent.width
                        editor: screen.editor
                    }
                    Flow {
                        width: parent.width
                        spacing: Theme.gap

                        InkButton {
                            objectName: "begin"
                            text: qsTrId("welcome.drill")
                            strong: true
                            enabled: screen.editor.valid && !screen.editor.readOnly
                            onClicked: screen.begin()
                        }
                        InkButton {
                            objectName: "fromScore"
                            text: qsTrId("passages.from-score")
                            enabled: !screen.editor.readOnly
                            onClicked: screen.scoreRequested()
                        }
                        InkButton {
                            objectName: "otherWays"
                            text: qsTrId("welcome.other-ways")
                            onClicked: PracticeRoom.screen = "passages"
                        }
                    }
                }
            }
            Column {
                width: columns.single ? columns.width : Math.floor((columns.width - columns.spacing) * 0.44)
                spacing: Theme.gap

                Cautions {
                    width: parent.width
                }
                PedalCard {
                    width: parent.width
                    keys: screen.keys
                }
            }
        }
    }
    Component.onCompleted: name.take()
}
