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

    function begin() {
        const passage = editor.save();
        if (passage === "")
            return;
        settings.welcomed = true;
        drillRequested(passage);
    }

    onDrillRequested: passage => PracticeRoom.openDrill(passage)

    ScrollColumn {
        anchors.fill: parent
        anchors.leftMargin: Theme.margin
        anchors.rightMargin: Theme.gap
        spacing: Theme.gap
        topMargin: 16
        bottomMargin: 24

        InkText {
            width: parent.width
            text: qsTr("Your first passage")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        InkText {
            width: parent.width
            text: qsTr("Take the bars that go wrong, and start at a tempo where nothing does. The rest has a good beginning and can be changed later.")
            color: Theme.faint
            wrapMode: Text.Wrap
        }
        Row {
            id: columns
            width: parent.width
            spacing: Theme.gap

            Column {
                width: (columns.width - columns.spacing) * 0.56
                spacing: Theme.gap

                SettingsCard {
                    width: parent.width
                    title: qsTr("The passage")

                    GridLayout {
                        width: parent.width
                        columns: 3
                        columnSpacing: Theme.gap
                        rowSpacing: Theme.gap

                        FormCell {
                            editor: screen.editor
                            id: name
                            Layout.columnSpan: 3
                            Layout.preferredWidth: 3
                            focus: true
                            name: "title"
                            label: qsTr("Name")
                            onAccepted: screen.begin()
                            placeholder: screen.editor.usualTitle
                        }
                        FormCell {
                            editor: screen.editor
                            name: "firstBar"
                            label: qsTr("First bar")
                            onAccepted: screen.begin()
                        }
                        FormCell {
                            editor: screen.editor
                            name: "bars"
                            label: qsTr("How many bars")
                            onAccepted: screen.begin()
                        }
                        FormCell {
                            editor: screen.editor
                            name: "meter"
                            label: qsTr("Meter")
                            onAccepted: screen.begin()
                        }
                        FormCell {
                            editor: screen.editor
                            name: "start"
                            label: qsTr("Start at")
                            onAccepted: screen.begin()
                        }
                        FormCell {
                            editor: screen.editor
                            name: "target"
                            label: qsTr("Target")
                            onAccepted: screen.begin()
                        }
                        Choice {
                            Layout.fillWidth: true
                            Layout.preferredWidth: 1
                            Layout.alignment: Qt.AlignTop
                            label: qsTr("Subdivision")
                            options: screen.editor.subdivisions
                            value: screen.editor.draft["subdivision"]
                            onChosen: value => screen.editor.set("subdivision", value)
                        }
                    }
                    RuleNote {
                        width: parent.width
                        editor: screen.editor
                    }
                    InkButton {
                        objectName: "begin"
                        text: qsTr("To the drill")
                        strong: true
                        enabled: screen.editor.valid && !screen.editor.readOnly
                        onClicked: screen.begin()
                    }
                }
            }
            Column {
                width: (columns.width - columns.spacing) * 0.44
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
