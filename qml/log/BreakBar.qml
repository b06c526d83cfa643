// SPDX-License-Identifier: GPL-3.0-or-later
// A bar of the music and its misses, beat by beat. The worst beats have their number above them.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick

Item {
    id: bar

    property var values: ({})

    readonly property int beats: values.beats.length
    readonly property bool named: width >= number.implicitWidth + 2

    Accessible.role: Accessible.ListItem
    Accessible.name: values.spoken

    Row {
        id: heights
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: number.top
        anchors.bottomMargin: 4
        height: parent.height - number.height - 4
        spacing: bar.beats > 1 ? 2 : 0

        Repeater {
            model: bar.values.beats

            Item {
                id: beat

                required property var modelData

                width: Math.max(2, Math.min(22, (bar.width * 0.86 - (bar.beats - 1) * heights.spacing) / bar.beats))
                height: heights.height

                Rectangle {
                    anchors.bottom: parent.bottom
                    width: parent.width
                    height: Math.max(4, beat.modelData.share * (parent.height - count.height))
                    radius: Math.min(3, width / 2)
                    color: beat.modelData.worst ? Theme.miss : Theme.faint
                }
                InkText {
                    id: count
                    anchors.horizontalCenter: parent.horizontalCenter
                    y: parent.height - Math.max(4, beat.modelData.share * (parent.height - height)) - height
                    visible: beat.modelData.worst
                    text: beat.modelData.count
                    color: Theme.miss
                    font.pixelSize: 13
                    font.weight: Font.DemiBold
                    Accessible.ignored: true
                }
            }
        }
    }
    InkText {
        id: number
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        opacity: bar.named ? 1 : 0
        text: bar.values.label
        font.pixelSize: Theme.small
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
}
