// SPDX-License-Identifier: GPL-3.0-or-later
// A piece: its name, the instrument it is played on, the date it is due.
import QtQuick
import Piolo

Row {
    id: form

    required property PieceEditor piece
    property bool readOnly: false

    readonly property bool faulty: piece.nameFault !== "" || piece.dueFault !== ""
    readonly property real part: (width - 2 * spacing) / 10

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
