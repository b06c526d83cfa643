// SPDX-License-Identifier: GPL-3.0-or-later
// The name of a row or a column of the grid, and below or beside it what it is in other words.
import QtQuick

Item {
    id: head

    property string text: ""
    property string detail: ""
    property bool strong: false
    /// Beside the cells instead of above them.
    property bool beside: false
    /// A word instead of a key's name.
    property bool words: false

    readonly property bool stacked: !beside || words

    InkText {
        id: name
        x: head.beside ? 0 : Math.round((parent.width - width) / 2)
        y: head.beside ? (parent.height - height - (small.visible && head.stacked ? small.height : 0)) / 2 : head.detail === "" ? 6 : 0
        width: head.words && head.beside ? parent.width : implicitWidth
        horizontalAlignment: head.beside ? Text.AlignRight : Text.AlignHCenter
        text: head.text
        font.pixelSize: head.words ? Theme.body : Math.min(22, head.height * 0.44)
        font.weight: head.strong ? Font.Bold : head.words ? Font.Medium : Font.DemiBold
        fontSizeMode: head.words ? Text.HorizontalFit : Text.FixedSize
        minimumPixelSize: 11
        Accessible.ignored: true
    }
    InkText {
        id: small
        visible: text !== "" && (!head.beside || head.height > 40)
        // On whole pixels: small letters between them look pale.
        x: head.stacked && head.beside ? 0 : Math.round(head.beside ? parent.width - width : (parent.width - width) / 2)
        y: Math.round(!head.stacked ? (parent.height - height) / 2 : head.beside ? name.y + name.height : parent.height - height - 2)
        width: head.stacked && head.beside ? parent.width : implicitWidth
        horizontalAlignment: Text.AlignRight
        text: head.detail
        color: Theme.faint
        font.pixelSize: head.words ? Math.min(Theme.small, head.height * 0.3) : Math.max(12, Math.min(14, head.height * 0.28))
        font.weight: Font.Medium
        Accessible.ignored: true
    }
}
