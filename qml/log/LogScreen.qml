// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that happened, by day, with filters.
// Qt 6.4's linter does not see ids outside a component.
// qmllint disable unqualified
import QtQuick
import Piolo

FocusScope {
    id: screen

    property LogModel log: PracticeRoom.log
    property KeyBindings keys: PracticeRoom.keys
    /// A small window: the figures are above the days and scroll with them.
    readonly property bool above: width < 940 || height < 640
    readonly property rect place: above
        ? Qt.rect(Theme.margin, 0, width - Theme.margin - 4, height) : head.room

    signal drillRequested(string passage)

    onDrillRequested: passage => PracticeRoom.openDrill(passage)

    LogHead {
        id: head
        parent: screen.above && days.headerItem ? days.headerItem : screen
        width: screen.above ? days.width - 14 : screen.width
        height: screen.above ? implicitHeight : screen.height
        above: screen.above
        log: screen.log
        keys: screen.keys
        onDrillRequested: passage => screen.drillRequested(passage)
    }
    Card {
        x: screen.place.x
        y: screen.place.y
        width: screen.place.width
        height: screen.place.height
        color: screen.above ? "transparent" : Theme.card
        border.width: screen.above ? 0 : 1

        LogList {
            id: days
            objectName: "logList"
            anchors.fill: parent
            anchors.margins: screen.above ? 0 : Theme.gap
            anchors.rightMargin: 4
            anchors.bottomMargin: takenBack.visible ? takenBack.height + 2 * 8 : anchors.margins
            log: screen.log
            focus: true
            header: Item {
                width: days.width
                height: screen.above ? head.implicitHeight + Theme.gap : 0
                onHeightChanged: Qt.callLater(days.stayAtTop)
            }
        }
        TakenBackLine {
            id: takenBack
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            anchors.margins: 8
            text: screen.log.takenBack
            onPutBackWanted: screen.log.putBack()
        }
    }

    Component.onCompleted: log.shown = true
    Component.onDestruction: log.shown = false
}
