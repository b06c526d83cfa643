// SPDX-License-Identifier: GPL-3.0-or-later
// The passage that is drilled, the way back, and the next one.
import QtQuick
import Piolo

Item {
    id: header

    required property DrillModel drill
    required property KeyBindings keys
    /// Where the way back leads, in words.
    property string wayBack: ""
    /// True if there is another passage.
    property bool more: false
    /// The buttons have a line of their own.
    property bool narrow: false

    signal backWanted()
    signal nextWanted()

    implicitHeight: Math.max(back.height, next.height, narrow ? 0 : title.height + about.height + 2)
                    + (narrow ? title.height + about.height + 10 : 0)

    InkButton {
        id: back
        objectName: "wayBack"
        text: header.wayBack
        mark: "‹"
        Accessible.name: qsTrId("drill.way-back").arg(header.wayBack)
        onClicked: header.backWanted()
    }
    InkButton {
        id: next
        objectName: "nextPassage"
        anchors.right: parent.right
        visible: header.more || header.drill.isScale
        text: header.drill.isScale ? qsTrId("drill.next-scale") : qsTrId("drill.next")
        key: header.keys.shown.next
        onClicked: header.nextWanted()
    }
    InkText {
        id: title
        x: header.narrow ? 0 : back.width + Theme.gap
        y: header.narrow ? Math.max(back.height, next.height) + 8 : 0
        width: header.narrow ? parent.width : (next.visible ? next.x : parent.width) - x - Theme.gap
        text: header.drill.text.title
        font.pixelSize: header.narrow ? 20 : Theme.heading
        font.weight: Font.DemiBold
        elide: Text.ElideRight
        Accessible.role: Accessible.Heading
    }
    InkText {
        id: about
        x: title.x
        anchors.top: title.bottom
        anchors.topMargin: 2
        width: title.width
        text: header.drill.text.about
        color: Theme.faint
        font.pixelSize: header.narrow ? Theme.small : Theme.body
        wrapMode: Text.Wrap
        elide: Text.ElideRight
        maximumLineCount: 2
    }
}
