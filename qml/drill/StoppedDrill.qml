// SPDX-License-Identifier: GPL-3.0-or-later
// The controls of the stopped drill: the tempo, Start, and below them what is seldom needed.
import QtQuick
import QtQuick.Layouts
import Piolo

ColumnLayout {
    id: panel

    required property DrillModel drill
    required property KeyBindings keys
    required property SoundSettings sound
    /// The number of marks that are not on disk yet.
    property int unsaved: 0
    /// There is little height: the tempo is beside Start.
    property bool compact: false
    /// The height of the tempo.
    property real figure: 110
    property bool howToPlayOpen: false

    signal logWanted()
    signal howToPlayWanted(int reason)

    spacing: compact ? 8 : 12

    GridLayout {
        Layout.fillWidth: true
        columns: panel.compact ? 2 : 1
        columnSpacing: 12
        rowSpacing: 12

        TempoFigure {
            id: tempo
            Layout.fillWidth: true
            Layout.preferredWidth: 5
            drill: panel.drill
            keys: panel.keys
            size: panel.compact ? 72 : panel.figure
            onDone: panel.forceActiveFocus()
        }
        InkText {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            visible: !panel.compact && !tempo.typing
            horizontalAlignment: Text.AlignHCenter
            text: caption.text
            color: Theme.faint
            wrapMode: Text.WordWrap
        }
        InkButton {
            objectName: "start"
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            Layout.preferredHeight: panel.compact ? 72 : 84
            text: qsTrId("drill.start")
            mark: "▶"
            key: panel.keys.shown.mark
            strong: true
            size: 24
            enabled: panel.drill.open
            onClicked: panel.drill.start()
        }
    }
    InkText {
        id: caption
        Layout.fillWidth: true
        visible: panel.compact && !tempo.typing
        horizontalAlignment: Text.AlignHCenter
        text: panel.drill.listening.active ? qsTrId("drill.only-heard").arg(panel.drill.text.tempoLine)
              : Formatter.inOneLine(panel.drill.text.tempoLine, Formatter.inOneLine(panel.drill.text.opening, panel.drill.text.search))
        color: Theme.faint
        wrapMode: Text.WordWrap
    }
    BeatRow {
        visible: panel.drill.listening.active
        Layout.fillWidth: true
        beats: panel.drill.beats
        cellHeight: 40
    }
    RowLayout {
        Layout.fillWidth: true
        visible: sitting.text !== ""
        spacing: 12

        SittingLine {
            id: sitting
            Layout.fillWidth: true
            text: panel.drill.text.sitting
            onClicked: panel.logWanted()
        }
        InkButton {
            objectName: "back"
            text: qsTrId("drill.take-back")
            key: panel.keys.shown.back
            onClicked: panel.drill.takeBack()
        }
    }
    TakenBackLine {
        Layout.fillWidth: true
        text: panel.drill.text.takenBack
        onPutBackWanted: panel.drill.putBack()
    }
    InkText {
        Layout.fillWidth: true
        visible: panel.unsaved > 0
        horizontalAlignment: Text.AlignHCenter
        text: qsTrId("today.unsaved", panel.unsaved)
        color: Theme.faint
        font.pixelSize: Theme.small
    }
    HowToPlayLine {
        Layout.fillWidth: true
        drill: panel.drill
        open: panel.howToPlayOpen
        onClicked: panel.howToPlayWanted(focusReason)
    }
    VolumeLine {
        Layout.fillWidth: true
        sound: panel.sound
    }
    MarkLegend {
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        visible: panel.drill.legend && !panel.compact
        horizontalAlignment: Text.AlignHCenter
        keys: panel.keys
        openEnded: panel.drill.openEnded
    }
}
