// SPDX-License-Identifier: GPL-3.0-or-later
// Sound, practice, looks and keys.
import QtQuick
import Piolo

FocusScope {
    id: screen

    property SettingsModel settings: PracticeRoom.settings
    property KeyBindings keys: PracticeRoom.keys
    /// Where the keys were changed last: what came of it is told there.
    property string touched: ""

    ScrollColumn {
        id: sheet
        anchors.fill: parent
        anchors.leftMargin: Theme.margin
        anchors.rightMargin: Theme.gap
        spacing: Theme.gap
        topMargin: 16
        bottomMargin: 24

        InkText {
            text: qsTr("Settings")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        Row {
            id: columns
            width: parent.width
            spacing: Theme.gap

            Column {
                width: (columns.width - columns.spacing) / 2
                spacing: Theme.gap

                SoundCard {
                    width: parent.width
                    settings: screen.settings
                }
                SettingsCard {
                    width: parent.width
                    title: qsTr("Looks")

                    Pills {
                        width: parent.width
                        label: qsTr("Looks")
                        options: screen.settings.themes
                        value: screen.settings.theme
                        onChosen: value => screen.settings.theme = value
                    }
                }
                SettingsCard {
                    width: parent.width
                    title: qsTr("Language")
                    note: qsTr("Words, numbers and dates on the screen. Files are the same in every language.")

                    Pills {
                        objectName: "language"
                        width: parent.width
                        label: qsTr("Language")
                        options: screen.settings.languages
                        value: screen.settings.language
                        onChosen: value => screen.settings.language = value
                    }
                }
            }
            Column {
                width: (columns.width - columns.spacing) / 2
                spacing: Theme.gap

                PracticeCard {
                    width: parent.width
                    settings: screen.settings
                }
            }
        }
        SwitchCard {
            width: parent.width
            settings: screen.settings
            keys: screen.keys
            touched: screen.touched === "switches"
            onTouch: screen.touched = "switches"
            onShowWanted: item => sheet.reveal(item)
        }
        SettingsCard {
            width: parent.width
            title: qsTr("Your keys")
            note: qsTr("A press on a key takes it away. Tab, Return on a button, the arrows in a list and Esc in a form work as in any other program, and stay.")

            KeyList {
                width: parent.width
                bindings: screen.keys
                touched: screen.touched
                onTouch: place => screen.touched = place
                onShowWanted: item => sheet.reveal(item)
            }
        }
    }
}
