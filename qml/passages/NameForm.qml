// SPDX-License-Identifier: GPL-3.0-or-later
// The passage's name and its piece: an existing one, a new one or none.
// Qt 6.4's linter does not see the ids around a component.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: form

    required property PassageEditor editor
    property bool pieceOpen: false

    readonly property bool inPiece: editor.pieceChoice !== ""

    function take() {
        name.take();
    }

    spacing: 12

    Row {
        width: parent.width
        spacing: Theme.gap

        FormField {
            id: name
            width: (parent.width - Theme.gap) * 0.56
            editor: form.editor
            name: "title"
            label: qsTrId("form.name")
            placeholder: form.editor.text.usualTitle
        }
        Choice {
            objectName: "field-piece"
            width: (parent.width - Theme.gap) * 0.44
            label: qsTrId("form.piece")
            options: form.editor.choices.pieces
            value: form.editor.pieceChoice
            onChosen: value => form.editor.pieceChoice = value
        }
    }
    Tick {
        objectName: "pieceOpen"
        visible: form.inPiece && form.editor.pieceChoice !== "new"
        text: qsTrId("form.edit-piece")
        checked: form.pieceOpen
        onTicked: on => form.pieceOpen = on
    }
    Kept {
        width: parent.width
        shown: form.inPiece && (form.pieceOpen || form.editor.pieceChoice === "new" || !form.editor.piece.valid)
        sourceComponent: PieceForm {
            piece: form.editor.piece
            readOnly: form.editor.readOnly
        }
    }
}
