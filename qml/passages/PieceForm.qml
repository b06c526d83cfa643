// SPDX-License-Identifier: GPL-3.0-or-later
// A piece: its name and composer, its instrument, its due date, its length.
import QtQuick
import Piolo

Column {
    id: form

    required property PieceEditor piece
    property bool readOnly: false

    readonly property real part: (width - 2 * Theme.gap) / 10

    spacing: 12

    Row {
        spacing: Theme.gap

        Field {
            objectName: "field-pieceName"
            width: form.part * 4
            label: qsTrId("piece.name")
            text: form.piece.name
            fault: form.piece.nameFault
            readOnly: form.readOnly
            onTyped: text => form.piece.name = text
        }
        Field {
            objectName: "field-instrument"
            width: form.part * 3
            label: qsTrId("piece.instrument")
            placeholder: qsTrId("piece.instrument.example")
            text: form.piece.instrument
            readOnly: form.readOnly
            onTyped: text => form.piece.instrument = text
        }
        Field {
            objectName: "field-due"
            width: form.part * 3
            label: qsTrId("piece.due")
            placeholder: qsTrId("piece.due.none")
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
            label: qsTrId("piece.composer")
            text: form.piece.composer
            fault: form.piece.composerFault
            readOnly: form.readOnly
            onTyped: text => form.piece.composer = text
        }
        Field {
            objectName: "field-transposition"
            width: form.part * 3
            label: qsTrId("piece.transposition")
            placeholder: qsTrId("piece.transposition.example")
            text: form.piece.transposition
            fault: form.piece.transpositionFault
            readOnly: form.readOnly
            onTyped: text => form.piece.transposition = text
        }
        Field {
            objectName: "field-pieceBars"
            width: form.part * 3
            label: qsTrId("piece.bars")
            placeholder: qsTrId("piece.bars.unknown")
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
            label: qsTrId("piece.meter")
            placeholder: qsTrId("piece.meter.example")
            text: form.piece.meter
            fault: form.piece.meterFault
            readOnly: form.readOnly
            onTyped: text => form.piece.meter = text
        }
        Field {
            objectName: "field-pieceTempo"
            width: form.part * 6 + Theme.gap
            label: form.piece.tempoLabel
            placeholder: qsTrId("piece.meter.unknown")
            text: form.piece.tempo
            fault: form.piece.tempoFault
            readOnly: form.readOnly
            onTyped: text => form.piece.tempo = text
        }
    }
    Field {
        objectName: "field-notes"
        width: form.width
        label: qsTrId("piece.notes")
        text: form.piece.notes
        fault: form.piece.notesFault
        readOnly: form.readOnly
        onTyped: text => form.piece.notes = text
    }
}
