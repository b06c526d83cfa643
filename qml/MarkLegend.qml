// SPDX-License-Identifier: GPL-3.0-or-later
// What the player marks while the click runs, and with which key.
// Qt 6.4's linter does not see the ids around a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Flow {
    id: legend

    required property KeyBindings keys
    property bool openEnded: false

    spacing: 8

    Repeater {
        model: [
            {mark: "▼", words: qsTr("a miss: %1").arg(legend.keys.markKeys), ink: Theme.miss},
            {mark: "●", words: legend.openEnded ? qsTr("clean: %1").arg(legend.keys.cleanKeys)
                                                : qsTr("clean: by itself at the last bar"), ink: Theme.clean},
            {mark: "■", words: qsTr("stop: %1").arg(legend.keys.stopKeys), ink: Theme.faint}
        ]

        Row {
            id: entry

            required property var modelData

            spacing: 6
            rightPadding: 14
            Accessible.role: Accessible.StaticText
            Accessible.name: entry.modelData.words

            Words {
                text: entry.modelData.mark
                color: entry.modelData.ink
                Accessible.ignored: true
            }
            Words {
                text: entry.modelData.words
                color: Theme.faint
                Accessible.ignored: true
            }
        }
    }
}
