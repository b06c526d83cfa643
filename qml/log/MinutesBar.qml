// SPDX-License-Identifier: GPL-3.0-or-later
// One day: practice time as a bar. A missed day has a ring; missed days in a row are joined by a line.
import QtQuick

Item {
    id: day

    property var values: ({})
    property bool pointed: false

    readonly property real room: height - foot.height
    readonly property real thick: Math.max(3, Math.min(14, width - 4))

    Accessible.role: Accessible.ListItem
    Accessible.name: values.spoken

    Rectangle {
        anchors.fill: parent
        visible: day.pointed
        color: Theme.accentWash
        radius: 3
    }
    Column {
        anchors.bottom: foot.top
        anchors.horizontalCenter: parent.horizontalCenter

        MinutesPart {
            width: day.thick
            height: day.values.throughs * day.room
            part: "throughs"
        }
        MinutesPart {
            width: day.thick
            height: day.values.apart * day.room
            part: "apart"
        }
        MinutesPart {
            width: day.thick
            height: day.values.runs * day.room
        }
    }
    Item {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        height: 14

        Rectangle {
            width: parent.width
            height: 1
            color: Theme.edge
        }
        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width
            height: 2
            visible: day.values.longGap
            color: Theme.miss
        }
        Rectangle {
            anchors.centerIn: parent
            width: 7
            height: 7
            radius: 4
            visible: day.values.missed
            color: Theme.card
            border.color: day.values.longGap ? Theme.miss : Theme.faint
            border.width: 1.5
        }
    }
}
