// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that happened, by day, with filters.
import QtQuick
import Piolo

FocusScope {
    id: screen

    property LogModel log: PracticeRoom.log
    property KeyBindings keys: PracticeRoom.keys

    signal drillRequested(string passage)

    onDrillRequested: passage => PracticeRoom.openDrill(passage)

    InkText {
        id: heading
        x: Theme.margin
        y: 16
        text: qsTrId("log.title")
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkText {
        id: missed
        anchors.left: heading.left
        anchors.right: parent.right
        anchors.rightMargin: Theme.margin
        anchors.top: filters.bottom
        anchors.topMargin: 8
        text: screen.log.figures.gapText
        color: Theme.faint
        elide: Text.ElideRight
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
    Item {
        id: side
        anchors.right: filters.right
        anchors.top: missed.bottom
        anchors.topMargin: missed.text === "" ? 0 : 10
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        width: Math.round(Math.min(460, (screen.width - 2 * Theme.margin) * 0.32))

        MinutesCard {
            id: minutes
            width: parent.width
            height: Math.round((parent.height - Theme.gap) * 0.38)
            figures: screen.log.figures
        }
        BreaksCard {
            width: parent.width
            anchors.top: minutes.bottom
            anchors.topMargin: Theme.gap
            anchors.bottom: parent.bottom
            figures: screen.log.figures
            keys: screen.keys
            onDrillRequested: passage => screen.drillRequested(passage)
        }
    }
    CurveCard {
        id: curves
        anchors.left: heading.left
        anchors.right: side.left
        anchors.rightMargin: Theme.gap
        anchors.top: side.top
        height: Math.round(side.height * 0.46)
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
