// SPDX-License-Identifier: GPL-3.0-or-later
// A card of text: a title and short paragraphs.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick

Card {
    id: chapter

    property string title: ""
    property var lines: []
    property string mark: ""

    implicitHeight: words.implicitHeight + 2 * Theme.gap

    Column {
        id: words
        x: 20
        y: Theme.gap
        width: parent.width - 40
        spacing: 10

        InkText {
            width: parent.width
            text: chapter.mark === "" ? chapter.title : chapter.mark + " " + chapter.title
            font.pixelSize: 18
            font.weight: Font.DemiBold
            wrapMode: Text.Wrap
            Accessible.role: Accessible.Heading
            Accessible.name: chapter.title
        }
        Repeater {
            model: chapter.lines

            InkText {
                required property string modelData
                width: words.width
                text: modelData
                wrapMode: Text.Wrap
                lineHeight: 1.2
            }
        }
    }
}
