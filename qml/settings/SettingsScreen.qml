// SPDX-License-Identifier: GPL-3.0-or-later
// Sound, practice, appearance and keys.
import QtQuick
import Piolo

FocusScope {
    id: screen

    property SettingsModel settings: PracticeRoom.settings
    property KeyBindings keys: PracticeRoom.keys
    /// Where the keys were last changed: the result is shown there.
    property string touched: ""
    /// There is room for cards side by side.
    readonly property bool twoColumns: width >= 880

    ScrollColumn {
        id: scroll
        anchors.fill: parent
        anchors.leftMargin: Theme.margin
        anchors.rightMargin: Theme.gap
        spacing: Theme.gap
        topMargin: 16
        bottomMargin: 24

        InkText {
            text: qsTrId("settings.title")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        Grid {
            id: columns
            width: parent.width
            columns: screen.twoColumns ? 2 : 1
            spacing: Theme.gap

            readonly property real share: screen.twoColumns ? (width - spacing) / 2 : width

            Column {
                width: columns.share
                spacing: Theme.gap

                SoundCard {
                    width: parent.width
                    settings: screen.settings
                }
                SettingsCard {
                    width: parent.width
                    title: qsTrId("settings.looks")

                    Pills {
                        width: parent.width
                        label: qsTrId("settings.looks")
                        options: screen.settings.themes
                        value: screen.settings.theme
                        onChosen: value => screen.settings.theme = value
                    }
                }
                SettingsCard {
                    width: parent.width
                    title: qsTrId("settings.language")
                    note: qsTrId("settings.language.hint")

                    Pills {
                        objectName: "language"
                        width: parent.width
                        label: qsTrId("settings.language")
                        options: screen.settings.languages
                        value: screen.settings.language
                        onChosen: value => screen.settings.language = value
                    }
                }
            }
            Column {
                width: columns.share
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
            onShowWanted: item => scroll.reveal(item)
        }
        SettingsCard {
            width: parent.width
            title: qsTrId("settings.keys")
            note: qsTrId("settings.keys.hint")

            KeyList {
                width: parent.width
                bindings: screen.keys
                touched: screen.touched
                onTouch: place => screen.touched = place
                onShowWanted: item => scroll.reveal(item)
            }
        }
    }
}
