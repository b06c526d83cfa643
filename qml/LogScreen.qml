// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that happened, by day, narrowed as the player likes.
import QtQuick
import Piolo

FocusScope {
    id: screen

    property LogModel log: PracticeRoom.log

    Words {
        id: heading
        x: Theme.margin
        y: 20
        text: qsTr("Practice log")
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    LogFilters {
        id: filters
        anchors.left: heading.right
        anchors.leftMargin: 2 * Theme.gap
        anchors.right: parent.right
        anchors.rightMargin: Theme.margin
        anchors.verticalCenter: heading.verticalCenter
        log: screen.log
        visible: !screen.log.nothingYet
    }
    Column {
        id: side
        anchors.right: filters.right
        anchors.top: filters.bottom
        anchors.topMargin: Theme.gap
        width: Math.round(Math.min(420, (screen.width - 2 * Theme.margin) * 0.32))
        spacing: Theme.gap
    }
    CurveCard {
        id: curves
        anchors.left: heading.left
        anchors.right: side.left
        anchors.rightMargin: Theme.gap
        anchors.top: side.top
        height: Math.round((screen.height - y) * 0.46)
        log: screen.log
    }
    Card {
        anchors.left: curves.left
        anchors.right: curves.right
        anchors.top: curves.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap

        LogList {
            objectName: "logList"
            anchors.fill: parent
            anchors.margins: Theme.gap
            anchors.rightMargin: 4
            log: screen.log
            focus: true
        }
    }

    Component.onCompleted: log.shown = true
    Component.onDestruction: log.shown = false
}
