// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet rung by rung: ticked circles, misses, the day, and the outcome before it is saved.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

Item {
    id: entry

    required property PaperRuns runs

    /// The rung that was last focused.
    property int at: 0

    function follow(rung) {
        at = rung;
        // Its neighbours, too, so that Tab finds them.
        for (const near of [Math.min(rung + 1, ladder.count - 1), Math.max(rung - 1, 0), rung])
            ladder.positionViewAtIndex(near, ListView.Contain);
    }

    readonly property real half: (width - Theme.gap) / 2
    readonly property real stepWidth: Math.min(240, (width - 14 - 92) / 2 - 12)

    InkText {
        anchors.fill: parent
        visible: !entry.runs.open
        text: qsTrId("paper.enter.choose-passage")
        color: Theme.faint
        wrapMode: Text.WordWrap
    }
    Row {
        id: head
        visible: entry.runs.open
        spacing: Theme.gap

        Field {
            objectName: "paper-day"
            width: entry.half
            label: qsTrId("paper.enter.day")
            text: entry.runs.day
            fault: entry.runs.dayFault
            onTyped: text => entry.runs.day = text
        }
        Field {
            objectName: "paper-lowest"
            width: entry.half
            label: qsTrId("paper.enter.lowest")
            text: entry.runs.lowest
            fault: entry.runs.lowestFault
            onTyped: text => entry.runs.lowest = text
        }
    }
    Row {
        id: columns
        anchors.top: head.bottom
        anchors.topMargin: 8
        visible: entry.runs.open
        spacing: 12

        InkText {
            width: 80
            horizontalAlignment: Text.AlignRight
            text: qsTrId("paper.enter.tempo")
            color: Theme.faint
            font.pixelSize: Theme.small
        }
        InkText {
            width: entry.stepWidth
            horizontalAlignment: Text.AlignHCenter
            text: qsTrId("paper.enter.ticked")
            color: Theme.faint
            font.pixelSize: Theme.small
        }
        InkText {
            width: entry.stepWidth
            horizontalAlignment: Text.AlignHCenter
            text: qsTrId("paper.enter.misses")
            color: Theme.faint
            font.pixelSize: Theme.small
        }
    }
    ListView {
        id: ladder
        objectName: "paper-ladder"
        anchors.top: columns.bottom
        anchors.topMargin: 4
        anchors.bottom: foot.top
        anchors.bottomMargin: 12
        width: parent.width
        visible: entry.runs.open
        clip: true
        spacing: 4
        boundsBehavior: Flickable.StopAtBounds
        onHeightChanged: entry.follow(Math.min(entry.at, count - 1))
        onCountChanged: entry.follow(0)
        // As on the sheet: the lowest rung is at the bottom.
        verticalLayoutDirection: ListView.BottomToTop
        model: entry.runs
        Accessible.role: Accessible.List
        Accessible.name: qsTrId("paper.enter.rungs")

        delegate: Row {
            id: rung

            required property int index
            required property string tempo
            required property bool target
            required property int clean
            required property int missed

            spacing: 12

            InkText {
                width: 80
                height: Theme.touch
                horizontalAlignment: Text.AlignRight
                verticalAlignment: Text.AlignVCenter
                text: rung.target ? qsTrId("paper.enter.target").arg(rung.tempo) : rung.tempo
                font.weight: Font.DemiBold
                font.pixelSize: 18
                Accessible.name: rung.target ? qsTrId("paper.enter.target.spoken").arg(rung.tempo) : rung.tempo
            }
            Stepper {
                objectName: "clean-" + rung.index
                width: entry.stepWidth
                bare: true
                label: qsTrId("paper.enter.ticked.spoken").arg(rung.tempo)
                words: qsTrId("paper.enter.of").arg(rung.clean).arg(entry.runs.circles)
                value: rung.clean
                to: entry.runs.circles
                onMoved: value => entry.runs.setClean(rung.index, value)
                onFocusInside: entry.follow(rung.index)
            }
            Stepper {
                objectName: "missed-" + rung.index
                width: entry.stepWidth
                bare: true
                label: qsTrId("paper.enter.misses.spoken").arg(rung.tempo)
                words: rung.missed
                value: rung.missed
                to: 99
                onMoved: value => entry.runs.setMissed(rung.index, value)
                onFocusInside: entry.follow(rung.index)
            }
        }
        T.ScrollBar.vertical: ScrollMark {
        }
    }
    Column {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        visible: entry.runs.open
        spacing: 8

        Grid {
            width: parent.width
            columns: 2
            columnSpacing: Theme.gap
            rowSpacing: 4

            Repeater {
                model: entry.runs.outcome

                Figure {
                    required property var modelData

                    width: entry.half
                    label: modelData.label
                    value: modelData.value
                }
            }
        }
        Row {
            width: parent.width
            spacing: 12

            InkButton {
                id: keep
                objectName: "paper-keep"
                text: qsTrId("paper.enter.keep")
                strong: enabled
                enabled: entry.runs.canKeep
                onClicked: entry.runs.keep()
            }
            InkButton {
                id: back
                objectName: "paper-take-back"
                visible: entry.runs.kept !== ""
                text: qsTrId("paper.enter.take-back")
                onClicked: entry.runs.takeBack()
            }
            InkText {
                objectName: "paper-said"
                width: parent.width - keep.width - (back.visible ? back.width + 12 : 0) - 12
                height: Theme.touch
                verticalAlignment: Text.AlignVCenter
                text: entry.runs.kept !== "" ? "✓ " + entry.runs.kept
                    : entry.runs.counted === "" ? qsTrId("paper.enter.misses-first")
                    : qsTrId("paper.enter.result").arg(entry.runs.counted)
                color: Theme.faint
                wrapMode: Text.WordWrap
                Accessible.role: Accessible.AlertMessage
            }
        }
    }
}
