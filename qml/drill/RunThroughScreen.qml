// SPDX-License-Identifier: GPL-3.0-or-later
// A piece from start to finish: one key for each stop.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

FocusScope {
    id: screen

    property RunThroughModel run: PracticeRoom.runThrough
    property KeyBindings keys: PracticeRoom.keys
    property bool recorded: !PracticeRoom.readOnly

    readonly property bool playing: run.state === RunThroughModel.Playing
    readonly property bool review: run.state === RunThroughModel.Review

    /// One column: the earlier ones are below, while nothing is played.
    readonly property bool tall: width < 760

    focus: true
    // Its keys work at once, and again after a focused button disappears.
    Component.onCompleted: forceActiveFocus()
    onPlayingChanged: forceActiveFocus()
    onReviewChanged: forceActiveFocus()

    InkText {
        id: heading
        x: Theme.margin
        y: 16
        width: parent.width - 2 * Theme.margin
        text: screen.run.open ? qsTrId("run-through.title").arg(screen.run.title) : qsTrId("run-through.choose-piece")
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        elide: Text.ElideRight
        Accessible.role: Accessible.Heading
    }

    Column {
        id: column
        anchors.left: heading.left
        anchors.top: heading.bottom
        anchors.topMargin: Theme.gap
        width: screen.tall ? heading.width : heading.width * 0.58
        spacing: Theme.gap
        visible: !screen.review

        InkText {
            objectName: "clock"
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: screen.run.clock
            font.pixelSize: Math.min(screen.height * 0.3, column.width * 0.3)
            font.weight: Font.Bold
        }
        InkText {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: screen.playing ? (screen.run.place === "" ? screen.run.counted : qsTrId("run-through.bar-stops").arg(screen.run.place).arg(screen.run.counted)) : qsTrId("run-through.hint")
            font.pixelSize: Theme.heading
            color: Theme.faint
            wrapMode: Text.WordWrap
        }
        Grid {
            anchors.horizontalCenter: parent.horizontalCenter
            columns: screen.tall ? 1 : 3
            horizontalItemAlignment: Grid.AlignHCenter
            spacing: 12

            InkButton {
                objectName: "throughStart"
                visible: !screen.playing
                focus: !screen.playing
                enabled: screen.run.open
                strong: true
                size: 24
                text: qsTrId("run-through.start")
                mark: "▶"
                key: screen.keys.shown.mark
                onClicked: screen.run.start()
            }
            InkButton {
                objectName: "throughStop"
                visible: screen.playing
                size: 24
                text: qsTrId("run-through.stop")
                key: screen.keys.shown.mark
                focusPolicy: Qt.NoFocus
                onClicked: screen.run.markStop()
            }
            InkButton {
                objectName: "throughEnd"
                visible: screen.playing
                strong: true
                size: 24
                text: qsTrId("run-through.last-note")
                key: screen.keys.shown.clean
                focusPolicy: Qt.NoFocus
                onClicked: screen.run.finish(true)
            }
            InkButton {
                visible: screen.playing
                size: 24
                text: qsTrId("run-through.give-up")
                key: screen.keys.shown.stop
                focusPolicy: Qt.NoFocus
                onClicked: screen.run.finish(false)
            }
        }
    }

    Card {
        anchors.left: heading.left
        anchors.top: heading.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        width: column.width
        visible: screen.review

        InkText {
            id: reviewTitle
            x: Theme.gap
            y: Theme.gap
            text: qsTrId("run-through.time-stops").arg(screen.run.clock).arg(screen.run.counted)
            font.pixelSize: 22
            font.weight: Font.DemiBold
        }
        InkText {
            id: reviewHelp
            x: Theme.gap
            width: parent.width - 2 * Theme.gap
            anchors.top: reviewTitle.bottom
            anchors.topMargin: 8
            text: screen.run.stops.length === 0 ? "" : qsTrId("run-through.bars-guessed")
            color: Theme.faint
            wrapMode: Text.WordWrap
        }
        ListView {
            x: Theme.gap
            width: parent.width - 2 * Theme.gap
            anchors.top: reviewHelp.bottom
            anchors.topMargin: 12
            anchors.bottom: reviewFault.top
            clip: true
            spacing: 8
            boundsBehavior: Flickable.StopAtBounds
            model: screen.run.stops.length

            delegate: Field {
                required property int index

                readonly property var stop: screen.run.stops[index]

                width: Math.min(240, ListView.view.width)
                label: qsTrId("run-through.stop-bar").arg(stop ? stop.time : "")
                placeholder: qsTrId("run-through.bar-unknown")
                text: stop ? stop.bar : ""
                onTyped: text => screen.run.setBar(index, text)
            }
        }
        InkText {
            id: reviewFault
            x: Theme.gap
            anchors.bottom: reviewButtons.top
            anchors.bottomMargin: 8
            text: screen.run.fault === "" ? "" : "▲ " + screen.run.fault
            color: Theme.miss
            height: text === "" ? 0 : implicitHeight
        }
        Row {
            id: reviewButtons
            x: Theme.gap
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.gap
            spacing: 12

            InkButton {
                objectName: "throughKeep"
                text: qsTrId("run-through.keep")
                strong: enabled
                enabled: screen.run.fault === "" && screen.recorded
                onClicked: screen.run.keep()
            }
            InkButton {
                text: qsTrId("run-through.discard")
                onClicked: screen.run.discard()
            }
        }
    }

    Card {
        x: screen.tall ? heading.x : column.x + column.width + Theme.gap
        y: (screen.tall ? column.y + column.height : heading.y + heading.height) + Theme.gap
        width: heading.x + heading.width - x
        height: parent.height - y - Theme.gap
        visible: !screen.tall || !screen.playing && !screen.review

        InkText {
            id: pastTitle
            x: Theme.gap
            y: Theme.gap
            text: qsTrId("run-through.earlier")
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        InkText {
            x: Theme.gap
            anchors.top: pastTitle.bottom
            anchors.topMargin: 8
            visible: screen.run.past.length === 0
            text: qsTrId("run-through.none")
            color: Theme.faint
        }
        ListView {
            x: Theme.gap
            width: parent.width - 2 * Theme.gap
            anchors.top: pastTitle.bottom
            anchors.topMargin: 8
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.gap
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            model: screen.run.past

            delegate: Figure {
                required property var modelData

                width: ListView.view.width
                label: qsTrId("run-through.day-length").arg(modelData.day).arg(modelData.length)
                value: modelData.stops
            }
        }
    }
}
