// SPDX-License-Identifier: GPL-3.0-or-later
// A piece: its name and composer, the instrument it is played on, the date it is due, its length.
import QtQuick
import Piolo

Column {
    id: form

    required property PieceEditor piece
    property bool readOnly: false

    readonly property bool faulty: !piece.valid
    readonly property real part: (width - 2 * Theme.gap) / 10

    spacing: 12

    Row {
        spacing: Theme.gap

        Field {
            objectName: "field-pieceName"
            width: form.part * 4
            label: qsTr("The piece's name")
            text: form.piece.name
            fault: form.piece.nameFault
            readOnly: form.readOnly
            onTyped: text => form.piece.name = text
        }
        Field {
            objectName: "field-instrument"
            width: form.part * 3
            label: qsTr("Played on")
            placeholder: qsTr("Clarinet in B♭")
            text: form.piece.instrument
            readOnly: form.readOnly
            onTyped: text => form.piece.instrument = text
        }
        Field {
            objectName: "field-due"
            width: form.part * 3
            label: qsTr("Due")
            placeholder: qsTr("no date")
            text: form.piece.due
            fault: form.piece.dueFault
            readOnly: form.readOnly
            onTyped: text => form.piece.due = text
        }
    }
    Row {
        spacing: Theme.gap

        Field {
            objectName: "field-composer"
            width: form.part * 4
            label: qsTr("Composer")
            text: form.piece.composer
            fault: form.piece.composerFault
            readOnly: form.readOnly
            onTyped: text => form.piece.composer = text
        }
        Field {
            objectName: "field-transposition"
            width: form.part * 3
            label: qsTr("Sounds by semitones")
            placeholder: qsTr("−2 for a clarinet in B♭")
            text: form.piece.transposition
            fault: form.piece.transpositionFault
            readOnly: form.readOnly
            onTyped: text => form.piece.transposition = text
        }
        Field {
            objectName: "field-pieceBars"
            width: form.part * 3
            label: qsTr("Bars in all")
            placeholder: qsTr("not known")
            text: form.piece.bars
            fault: form.piece.barsFault
            readOnly: form.readOnly
            onTyped: text => form.piece.bars = text
        }
    }
    Row {
        spacing: Theme.gap

        Field {
            objectName: "field-pieceMeter"
            width: form.part * 4
            label: qsTr("Meter of the piece")
            placeholder: qsTr("4/4")
            text: form.piece.meter
            fault: form.piece.meterFault
            readOnly: form.readOnly
            onTyped: text => form.piece.meter = text
        }
        Field {
            objectName: "field-pieceTempo"
            width: form.part * 6 + Theme.gap
            label: form.piece.tempoLabel
            placeholder: qsTr("not known; a run-through then tells no bars")
            text: form.piece.tempo
            fault: form.piece.tempoFault
            readOnly: form.readOnly
            onTyped: text => form.piece.tempo = text
        }
    }
    Field {
        objectName: "field-notes"
        width: form.width
        label: qsTr("Notes")
        text: form.piece.notes
        fault: form.piece.notesFault
        readOnly: form.readOnly
        onTyped: text => form.piece.notes = text
    }
}
