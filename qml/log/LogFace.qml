// SPDX-License-Identifier: GPL-3.0-or-later
// A line of the log: when, what, how fast, how it went, and its effect; side by side, or in two rows.
import QtQuick

Item {
    id: face

    property var values: ({})

    property bool compact: width < 620
    readonly property real effectWidth: Math.min(340, width * 0.3)
    readonly property real firstRow: compact ? 18 : height / 2
    readonly property real secondRow: compact ? 44 : height / 2

    InkText {
        id: time
        x: 8
        y: face.firstRow - height / 2
        width: 56
        text: face.values.time
        color: Theme.faint
        Accessible.ignored: true
    }
    InkText {
        anchors.left: time.right
        anchors.right: tempo.left
        anchors.rightMargin: 12
        y: face.firstRow - height / 2
        text: face.values.title
        elide: Text.ElideMiddle
        Accessible.ignored: true
    }
    InkText {
        id: tempo
        x: (face.compact ? parent.width - 8 : marks.x - 16) - width
        y: face.firstRow - height / 2
        width: 44
        horizontalAlignment: Text.AlignRight
        text: face.values.tempo
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
    MarkRow {
        id: marks
        x: face.compact ? parent.width - width - 8 : effect.x - width - 12
        y: face.secondRow - height / 2
        width: 124
        horizontalAlignment: face.compact ? Text.AlignRight : Text.AlignLeft
        marks: face.values.marks
    }
    InkText {
        id: effect
        x: face.compact ? 64 : parent.width - width - 8
        y: face.secondRow - height / 2
        width: face.compact ? parent.width - 64 - (face.values.marks === "" ? 8 : marks.width + 16) : face.effectWidth
        horizontalAlignment: face.compact ? Text.AlignLeft : Text.AlignRight
        text: face.values.effect
        color: Theme.faint
        font.pixelSize: face.compact ? Theme.small : Theme.body
        wrapMode: face.compact ? Text.NoWrap : Text.WordWrap
        maximumLineCount: face.compact ? 1 : 2
        lineHeight: 0.9
        elide: Text.ElideRight
        Accessible.ignored: true
    }
}
