// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of a line of the log: when, what, how fast, how it went, and its effect.
import QtQuick

Item {
    id: face

    property var values: ({})

    readonly property bool narrow: width < 680
    readonly property real effectWidth: Math.min(340, width * 0.29)

    InkText {
        id: time
        x: 8
        width: face.narrow ? 50 : 56
        anchors.verticalCenter: parent.verticalCenter
        text: face.values.time
        color: Theme.faint
        Accessible.ignored: true
    }
    InkText {
        anchors.left: time.right
        anchors.right: tempo.left
        anchors.rightMargin: face.narrow ? 6 : 12
        anchors.verticalCenter: parent.verticalCenter
        text: face.values.title
        font.pixelSize: face.narrow ? Theme.small : Theme.body
        wrapMode: face.narrow ? Text.WordWrap : Text.NoWrap
        maximumLineCount: face.narrow ? 2 : 1
        lineHeight: 0.9
        elide: face.narrow ? Text.ElideRight : Text.ElideMiddle
        Accessible.ignored: true
    }
    InkText {
        id: tempo
        anchors.right: marks.left
        anchors.rightMargin: face.narrow ? 10 : 16
        width: 44
        anchors.verticalCenter: parent.verticalCenter
        horizontalAlignment: Text.AlignRight
        text: face.values.tempo
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
    MarkRow {
        id: marks
        anchors.right: effect.left
        anchors.rightMargin: 12
        width: face.narrow ? 100 : 124
        anchors.verticalCenter: parent.verticalCenter
        marks: face.values.marks
    }
    InkText {
        id: effect
        anchors.right: parent.right
        anchors.rightMargin: 8
        width: face.effectWidth
        anchors.verticalCenter: parent.verticalCenter
        horizontalAlignment: Text.AlignRight
        text: face.values.effect
        color: Theme.faint
        wrapMode: Text.WordWrap
        maximumLineCount: 2
        lineHeight: 0.9
        elide: Text.ElideRight
        Accessible.ignored: true
    }
}
