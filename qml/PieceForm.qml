// SPDX-License-Identifier: GPL-3.0-or-later
// The piece of a passage: an existing one, a new one, or none.
import QtQuick
import QtQuick.Layouts
import Piolo

ColumnLayout {
    id: form

    required property PassageEditor editor

    readonly property PieceEditor piece: editor.piece

    spacing: Theme.gap

    Choice {
        objectName: "field-piece"
        Layout.fillWidth: true
        label: qsTr("Piece")
        options: form.editor.pieces
        value: form.editor.pieceChoice
        onChosen: value => form.editor.pieceChoice = value
    }
    GridLayout {
        Layout.fillWidth: true
        visible: form.editor.pieceChoice !== ""
        columns: 3
        columnSpacing: Theme.gap

        Field {
            objectName: "field-pieceName"
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            Layout.alignment: Qt.AlignTop
            label: qsTr("Its name")
            text: form.piece.name
            fault: form.editor.pieceChoice !== "" ? form.piece.nameFault : ""
            readOnly: form.editor.readOnly
            onTyped: text => form.piece.name = text
        }
        Field {
            objectName: "field-instrument"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Layout.alignment: Qt.AlignTop
            label: qsTr("Played on")
            placeholder: qsTr("Clarinet in B♭")
            text: form.piece.instrument
            readOnly: form.editor.readOnly
            onTyped: text => form.piece.instrument = text
        }
        Field {
            objectName: "field-due"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Layout.alignment: Qt.AlignTop
            label: qsTr("Due")
            placeholder: qsTr("no date")
            text: form.piece.due
            fault: form.piece.dueFault
            readOnly: form.editor.readOnly
            onTyped: text => form.piece.due = text
        }
    }
}
