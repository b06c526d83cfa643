// SPDX-License-Identifier: GPL-3.0-or-later
// Paragraphs under a title; nothing if there are none.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick

Column {
    id: part

    property string title: ""
    property var lines: []
    property bool small: false

    visible: lines.length > 0
    spacing: 10

    InkText {
        width: part.width
        text: part.title
        font.pixelSize: 18
        font.weight: Font.DemiBold
        wrapMode: Text.Wrap
        Accessible.role: Accessible.Heading
    }
    Repeater {
        model: part.lines

        InkText {
            required property string modelData
            width: part.width
            text: modelData
            color: part.small ? Theme.faint : Theme.ink
            font.pixelSize: part.small ? Theme.small : Theme.body
            wrapMode: Text.Wrap
            lineHeight: part.small ? 1.15 : 1.25
        }
    }
}
