// SPDX-License-Identifier: GPL-3.0-or-later
// Sound, practice, looks and keys.
import QtQuick
import Piolo

FocusScope {
    id: screen

    property SettingsModel settings: PracticeRoom.settings
    property KeyBindings keys: PracticeRoom.keys

    Sheet {
        id: sheet
        anchors.fill: parent
        anchors.leftMargin: Theme.margin
        anchors.rightMargin: Theme.gap
        spacing: Theme.gap
        topMargin: 20
        bottomMargin: 24

        Words {
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
            }
            Column {
                width: (columns.width - columns.spacing) / 2
                spacing: Theme.gap

                PracticeCard {
                    width: parent.width
                    settings: screen.settings
                }
                SettingsCard {
                    width: parent.width
                    title: qsTr("Your keys")
                    note: qsTr("A page turner pedal is a key like any other: choose what it is to do, then press it.")

                    KeyList {
                        width: parent.width
                        bindings: screen.keys
                    }
                }
            }
        }
    }
}
