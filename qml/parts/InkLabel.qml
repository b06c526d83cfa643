// SPDX-License-Identifier: GPL-3.0-or-later
// The content of a button: a symbol, its text, and below it the key that does the same.
import QtQuick

Item {
    id: label

    property string text: ""
    property string mark: ""
    property string key: ""
    property int size: Theme.body
    property color ink: Theme.ink
    property bool oneLine: false

    // As if on a single line each, even if they wrap: sizes that depend on the width would loop in a layout.
    implicitWidth: Math.max(textWidth + (sign.visible ? sign.implicitWidth + row.spacing : 0), keyWidth)
    implicitHeight: large.height + (key === "" ? 0 : words.spacing + small.height)

    readonly property real textWidth: Math.ceil(wholeText.advanceWidth) + 2
    readonly property real keyWidth: key === "" ? 0 : Math.ceil(wholeKey.advanceWidth) + 2
    /// The width of a button without its rounded edges.
    readonly property real room: Math.max(0, width - 8)

    FontMetrics {
        id: large
        font.family: Theme.family
        font.pixelSize: label.size
    }
    FontMetrics {
        id: small
        font.family: Theme.family
        font.pixelSize: Theme.small
    }
    TextMetrics {
        id: wholeText
        font.family: Theme.family
        font.pixelSize: label.size
        font.weight: Font.DemiBold
        text: label.text
    }
    TextMetrics {
        id: wholeKey
        font.family: Theme.family
        font.pixelSize: Theme.small
        text: label.key
    }
    Column {
        id: words
        anchors.centerIn: parent
        spacing: 2

        Row {
            id: row
            anchors.horizontalCenter: parent.horizontalCenter
            spacing: sign.visible && label.text !== "" ? 8 : 0

            InkText {
                id: sign
                visible: text !== ""
                text: label.mark
                color: label.ink
                font.pixelSize: label.size
                Accessible.ignored: true
            }
            InkText {
                id: main
                width: Math.min(label.textWidth, Math.max(0, label.room - (sign.visible ? sign.width + parent.spacing : 0)))
                text: label.text
                color: label.ink
                font.pixelSize: label.size
                font.weight: Font.DemiBold
                wrapMode: label.oneLine ? Text.NoWrap : Text.WordWrap
                elide: label.oneLine ? Text.ElideRight : Text.ElideNone
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
        }
        InkText {
            id: keys
            anchors.horizontalCenter: parent.horizontalCenter
            width: Math.min(label.keyWidth, label.room)
            visible: text !== ""
            text: label.key
            color: label.ink
            font.pixelSize: Theme.small
            wrapMode: Text.WordWrap
            maximumLineCount: 2
            elide: Text.ElideRight
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
}
