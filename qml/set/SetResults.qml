// SPDX-License-Identifier: GPL-3.0-or-later
// What a set is, or what the last one made of each passage.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick

Column {
    id: part

    property var results: []

    bottomPadding: Theme.gap
    spacing: 8

    InkText {
        width: parent.width
        visible: part.results.length === 0
        text: qsTrId("set.about")
        color: Theme.faint
        wrapMode: Text.Wrap
    }
    Card {
        width: parent.width
        height: lines.height + 2 * Theme.gap
        visible: part.results.length > 0

        Column {
            id: lines
            x: Theme.gap
            y: Theme.gap
            width: parent.width - 2 * Theme.gap
            spacing: 8

            Repeater {
                model: part.results

                Column {
                    required property var modelData
                    required property int index

                    width: parent.width

                    InkText {
                        width: parent.width
                        text: modelData.title
                        font.weight: Font.DemiBold
                        elide: Text.ElideRight
                    }
                    InkText {
                        objectName: "result-" + index
                        width: parent.width
                        text: modelData.text
                        wrapMode: Text.Wrap
                    }
                }
            }
        }
    }
}
