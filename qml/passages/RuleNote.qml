// SPDX-License-Identifier: GPL-3.0-or-later
// What the rule in the form means: where it settles, how long it takes, and a suggestion for long runs.
import QtQuick
import Piolo

Rectangle {
    id: note

    required property PassageEditor editor

    implicitHeight: words.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: Theme.accentWash

    Column {
        id: words
        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        spacing: 8

        InkText {
            objectName: "settles"
            width: parent.width
            text: note.editor.outlook.settleSentence
            font.weight: Font.DemiBold
            wrapMode: Text.Wrap
        }
        InkText {
            width: parent.width
            text: note.editor.outlook.timeSentence
            wrapMode: Text.Wrap
        }
        InkText {
            width: parent.width
            visible: text !== ""
            text: note.editor.outlook.proposal
            wrapMode: Text.Wrap
        }
        InkButton {
            objectName: "takeProposal"
            visible: note.editor.outlook.proposedCleanRuns > 0 && !note.editor.readOnly
            text: qsTrId("form.rule.take").arg(Formatter.countWord(note.editor.outlook.proposedCleanRuns))
            onClicked: note.editor.takeProposal()
        }
    }
}
