// SPDX-License-Identifier: GPL-3.0-or-later
// The middle of the stopped drill: the tempo, the bar, and what the keys do.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Piolo

ColumnLayout {
    id: panel

    required property DrillModel drill
    required property KeyBindings keys
    /// The tempo is beside the beats to leave room for the music.
    property bool compact: false
    /// There is room to explain what the keys do while the click runs.
    property bool explained: true
    /// There is room for large buttons. Set from outside: a layout that depends on its own height would loop.
    property bool roomy: false

    signal logWanted()

    function inOneLine(a, b) {
        return a === "" || b === "" ? a + b : qsTrId("drill.figures").arg(a).arg(b);
    }

    /// A long key name takes a second line. Computed from the width of the controls: using the button's own
    /// width would loop.
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
            Layout.minimumHeight: panel.compact ? 60 : 90

            InkText {
                anchors.fill: parent
                text: panel.drill.text.tempo
                font.pixelSize: Math.max(20, Math.min(parent.height * 1.05, parent.width * (panel.compact ? 0.6 : 0.42)))
                font.weight: Font.Bold
                fontSizeMode: Text.Fit
                minimumPixelSize: 20
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                Accessible.name: panel.drill.text.tempoLine
            }
        }
        BeatRow {
            visible: panel.compact
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            beats: panel.drill.beats
            cellHeight: 40
        }
    }
    InkText {
        Layout.fillWidth: true
        horizontalAlignment: Text.AlignHCenter
        text: panel.drill.listening.active ? qsTrId("drill.only-heard").arg(panel.drill.text.tempoLine)
              : panel.drill.text.opening === "" ? panel.drill.text.tempoLine
              : qsTrId("drill.figures").arg(panel.drill.text.tempoLine).arg(panel.drill.text.opening)
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
            Layout.preferredWidth: 15
            Layout.preferredHeight: Theme.touch
            bare: true
            label: qsTrId("drill.felt-beat")
            options: panel.drill.playedAs.beats
            value: panel.drill.playedAs.beat
            onChosen: value => panel.drill.playedAs.feel(value)
        }
        Choice {
            objectName: "articulation"
            Layout.fillWidth: true
            Layout.preferredWidth: 16
            Layout.preferredHeight: Theme.touch
            bare: true
            label: qsTrId("drill.articulation")
            prefix: qsTrId("drill.articulation.notes")
            options: panel.drill.playedAs.articulations
            value: panel.drill.playedAs.articulation
            onChosen: value => panel.drill.playedAs.setArticulation(value)
        }
        Choice {
            objectName: "rhythm"
            Layout.fillWidth: true
            Layout.preferredWidth: 18
            Layout.preferredHeight: Theme.touch
            bare: true
            label: qsTrId("drill.rhythm")
            prefix: qsTrId("drill.rhythm.short")
            options: panel.drill.playedAs.rhythms
            value: panel.drill.playedAs.rhythm
            onChosen: value => panel.drill.playedAs.setRhythm(value)
        }
    }
    // What has just happened, and its way to the log.
    T.AbstractButton {
        id: sitting
        objectName: "sitting"
        Layout.fillWidth: true
        visible: text !== ""
        text: panel.drill.text.sitting
        implicitHeight: implicitContentHeight + 10
        hoverEnabled: true
        Accessible.role: Accessible.Button
        Accessible.name: qsTrId("drill.sitting.to-log").arg(text)
        Keys.onReturnPressed: clicked()
        Keys.onEnterPressed: clicked()
        onClicked: panel.logWanted()

        contentItem: InkText {
            horizontalAlignment: Text.AlignHCenter
            text: sitting.text + "  ›"
            font.weight: Font.DemiBold
            font.underline: sitting.hovered || sitting.visualFocus
            wrapMode: Text.WordWrap
            Accessible.ignored: true
        }
    }
    InkText {
        Layout.fillWidth: true
        visible: text !== "" && !sitting.visible
        horizontalAlignment: Text.AlignHCenter
        text: panel.inOneLine(panel.drill.text.search, panel.inOneLine(panel.drill.playedAs.bests, panel.drill.playedAs.fingering))
        color: Theme.faint
        font.pixelSize: Theme.small
        elide: Text.ElideRight
        maximumLineCount: 2
        wrapMode: Text.WordWrap
    }
    BeatRow {
        visible: !panel.compact
        Layout.fillWidth: true
        beats: panel.drill.beats
        cellHeight: panel.roomy ? 60 : 40
    }
    GridLayout {
        Layout.fillWidth: true
        Layout.fillHeight: false
        columns: 2
        columnSpacing: 12
        rowSpacing: panel.roomy ? 12 : 8

        InkButton {
            objectName: "start"
            Layout.fillWidth: true
            Layout.preferredWidth: 7
            Layout.preferredHeight: panel.roomy ? 84 : 60
            text: qsTrId("drill.start")
            mark: "▶"
            key: panel.keys.shown.mark
            strong: true
            size: 24
            enabled: panel.drill.open
            onClicked: panel.drill.start()
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 10
            spacing: 12

            InkButton {
                objectName: "slower"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: panel.roomy ? 84 : 60
                text: qsTrId("drill.slower")
                mark: "−"
                key: panel.keys.shown.slower
                onClicked: panel.drill.slower()
            }
            InkButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: panel.roomy ? 84 : 60
                text: qsTrId("drill.faster")
                mark: "+"
                key: panel.keys.shown.faster
                onClicked: panel.drill.faster()
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.columnSpan: 2
            spacing: 12

            InkButton {
                Layout.preferredHeight: panel.otherHeight
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: qsTrId("drill.try").arg(panel.drill.text.target)
                key: panel.keys.shown.try
                onClicked: panel.drill.attempt()
            }
            WaysToPlay {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.alignment: Qt.AlignVCenter
                drill: panel.drill
            }
            InkButton {
                id: back
                objectName: "back"
                Layout.preferredHeight: panel.otherHeight
                Layout.fillWidth: true
                Layout.preferredWidth: panel.backShare
                text: qsTrId("drill.take-back")
                key: panel.keys.shown.back
                onClicked: panel.drill.takeBack()
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.columnSpan: 2
            spacing: 12
            visible: panel.drill.listening.possible

            InkButton {
                objectName: "hear"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: panel.drill.listening.active ? qsTrId("drill.stop-listening") : qsTrId("drill.hear")
                key: panel.drill.listening.active ? panel.keys.shown.stop : panel.keys.shown.hear
                onClicked: panel.drill.listening.toggle()
            }
            Tick {
                objectName: "modelClick"
                Layout.fillWidth: true
                Layout.preferredWidth: 2
                text: qsTrId("drill.hear-with-click")
                Accessible.name: qsTrId("drill.hear-with-click.hint")
                checked: panel.drill.listening.withClick
                onTicked: on => panel.drill.listening.withClick = on
            }
        }
    }
    MarkLegend {
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        visible: panel.explained && !panel.compact
        keys: panel.keys
        openEnded: panel.drill.openEnded
    }
}
