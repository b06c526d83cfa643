// SPDX-License-Identifier: GPL-3.0-or-later
// The middle of the stopped drill: the tempo, the bar, and what the keys do.
import QtQuick
import QtQuick.Layouts
import Piolo

ColumnLayout {
    id: desk

    required property DrillModel drill
    required property KeyBindings keys
    /// The tempo stands beside the beats, so that the music has its room.
    property bool compact: false
    /// There is height for what the keys do while the click runs.
    property bool told: true
    /// There is height for large buttons. Said from outside: a layout that asked for its own height would go round.
    property bool roomy: false

    function inOneLine(a, b) {
        return a === "" || b === "" ? a + b : qsTrId("drill.figures").arg(a).arg(b);
    }

    /// A long name of a key takes a second line. By the desk's width: by the button's own it would go round.
    readonly property int otherHeight: (width - 24) * backShare / (2 + backShare) < back.implicitWidth - 24 ? 68 : 56
    readonly property real backShare: Theme.narrow ? 1 : 1.15

    spacing: roomy ? Theme.gap : 8

    RowLayout {
        Layout.fillWidth: true
        Layout.fillHeight: true
        spacing: Theme.gap

        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 2
            Layout.minimumHeight: desk.compact ? 60 : 90

            InkText {
                anchors.fill: parent
                text: desk.drill.tempoText
                font.pixelSize: Math.max(20, Math.min(parent.height * 1.05, parent.width * (desk.compact ? 0.6 : 0.42)))
                font.weight: Font.Bold
                fontSizeMode: Text.Fit
                minimumPixelSize: 20
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                Accessible.name: desk.drill.tempoLine
            }
        }
        BeatRow {
            visible: desk.compact
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            beats: desk.drill.beats
            cellHeight: 40
        }
    }
    InkText {
        Layout.fillWidth: true
        horizontalAlignment: Text.AlignHCenter
        text: desk.drill.hearing ? qsTrId("drill.only-heard").arg(desk.drill.tempoLine)
              : desk.drill.openingText === "" ? desk.drill.tempoLine
              : qsTrId("drill.figures").arg(desk.drill.tempoLine).arg(desk.drill.openingText)
        color: Theme.faint
        font.pixelSize: Theme.body + 2
        wrapMode: Text.WordWrap
    }
    RowLayout {
        Layout.fillWidth: true
        Layout.fillHeight: false
        spacing: 12

        Choice {
            objectName: "feltBeat"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.preferredHeight: Theme.touch
            bare: true
            label: qsTrId("drill.felt-beat")
            options: desk.drill.playedAs.beats
            value: desk.drill.playedAs.beat
            onChosen: value => desk.drill.playedAs.feel(value)
        }
        Choice {
            objectName: "articulation"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.preferredHeight: Theme.touch
            bare: true
            label: qsTrId("drill.articulation")
            prefix: qsTrId("drill.articulation.notes")
            options: desk.drill.playedAs.articulations
            value: desk.drill.playedAs.articulation
            onChosen: value => desk.drill.playedAs.setArticulation(value)
        }
        Choice {
            objectName: "rhythm"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.preferredHeight: Theme.touch
            bare: true
            label: qsTrId("drill.rhythm")
            prefix: qsTrId("drill.rhythm.short")
            options: desk.drill.playedAs.rhythms
            value: desk.drill.playedAs.rhythm
            onChosen: value => desk.drill.playedAs.setRhythm(value)
        }
    }
    InkText {
        Layout.fillWidth: true
        visible: text !== ""
        horizontalAlignment: Text.AlignHCenter
        text: desk.inOneLine(desk.drill.searchText, desk.inOneLine(desk.drill.playedAs.bests, desk.drill.playedAs.fingering))
        color: Theme.faint
        font.pixelSize: Theme.small
        elide: Text.ElideRight
        maximumLineCount: 2
        wrapMode: Text.WordWrap
    }
    BeatRow {
        visible: !desk.compact
        Layout.fillWidth: true
        beats: desk.drill.beats
        cellHeight: desk.roomy ? 60 : 40
    }
    GridLayout {
        Layout.fillWidth: true
        Layout.fillHeight: false
        columns: 2
        columnSpacing: 12
        rowSpacing: desk.roomy ? 12 : 8

        InkButton {
            objectName: "start"
            Layout.fillWidth: true
            Layout.preferredWidth: 7
            Layout.preferredHeight: desk.roomy ? 84 : 60
            text: qsTrId("drill.start")
            mark: "▶"
            key: desk.keys.markKeys
            strong: true
            size: 24
            enabled: desk.drill.open
            onClicked: desk.drill.start()
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 10
            spacing: 12

            InkButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: desk.roomy ? 84 : 60
                text: qsTrId("drill.slower")
                mark: "−"
                key: desk.keys.slowerKeys
                onClicked: desk.drill.slower()
            }
            InkButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: desk.roomy ? 84 : 60
                text: qsTrId("drill.faster")
                mark: "+"
                key: desk.keys.fasterKeys
                onClicked: desk.drill.faster()
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.columnSpan: 2
            spacing: 12

            InkButton {
                Layout.preferredHeight: desk.otherHeight
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: qsTrId("drill.try").arg(desk.drill.targetText)
                key: desk.keys.tryKeys
                onClicked: desk.drill.attempt()
            }
            WaysToPlay {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.alignment: Qt.AlignVCenter
                drill: desk.drill
            }
            InkButton {
                id: back
                Layout.preferredHeight: desk.otherHeight
                Layout.fillWidth: true
                Layout.preferredWidth: desk.backShare
                text: qsTrId("drill.take-back")
                key: desk.keys.backKeys
                onClicked: desk.drill.takeBack()
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.columnSpan: 2
            spacing: 12
            visible: desk.drill.canHear

            InkButton {
                objectName: "hear"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: desk.drill.hearing ? qsTrId("drill.stop-listening") : qsTrId("drill.hear")
                key: desk.drill.hearing ? desk.keys.stopKeys : desk.keys.hearKeys
                onClicked: desk.drill.hearFirst()
            }
            Tick {
                objectName: "modelClick"
                Layout.fillWidth: true
                Layout.preferredWidth: 2
                text: qsTrId("drill.hear-with-click")
                Accessible.name: qsTrId("drill.hear-with-click.hint")
                checked: desk.drill.modelClick
                onTicked: on => desk.drill.modelClick = on
            }
        }
    }
    MarkLegend {
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        visible: desk.told && !desk.compact
        keys: desk.keys
        openEnded: desk.drill.openEnded
    }
}
