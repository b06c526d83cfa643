// SPDX-License-Identifier: GPL-3.0-or-later
// One run of the log: a note can be written about it, and one made by mistake taken back, after one question.
import QtQuick
import Piolo

Column {
    id: entry

    property var values: ({})
    property bool changeable: true
    property bool busy: false
    property bool noting: false

    readonly property string story: values.mark === "" ? values.detail
        : values.detail === "" ? values.mark : qsTr("%1 · %2").arg(values.mark).arg(values.detail)

    signal busyWanted(bool on)
    signal takenBack
    signal noted(string text)

    function open(forNote) {
        noting = forNote;
        busyWanted(true);
        if (forNote)
            note.take();
        else
            keep.forceActiveFocus(Qt.TabFocusReason);
    }

    Item {
        width: parent.width
        implicitHeight: Theme.touch

        InkText {
            id: when
            anchors.verticalCenter: parent.verticalCenter
            text: entry.values.time
            color: Theme.faint
        }
        MarkRow {
            id: shape
            anchors.left: when.right
            anchors.leftMargin: 12
            anchors.verticalCenter: parent.verticalCenter
            width: 20
            marks: entry.values.marks
        }
        InkText {
            anchors.left: shape.right
            anchors.leftMargin: 8
            anchors.right: buttons.left
            anchors.rightMargin: 12
            anchors.verticalCenter: parent.verticalCenter
            elide: Text.ElideRight
            text: entry.story
        }
        Row {
            id: buttons
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            visible: entry.changeable && !entry.busy
            spacing: 8

            InkButton {
                objectName: "writeNote"
                implicitHeight: 36
                visible: entry.values.canNote
                text: entry.values.note === "" ? qsTr("Note") : qsTr("Change the note")
                Accessible.name: qsTr("Note on the run of %1").arg(entry.values.time)
                onClicked: entry.open(true)
            }
            InkButton {
                objectName: "takeEntryBack"
                implicitHeight: 36
                text: qsTr("Take back…")
                Accessible.name: qsTr("Take back the entry of %1").arg(entry.values.time)
                onClicked: entry.open(false)
            }
        }
    }
    InkText {
        x: when.width + 12
        width: parent.width - x
        visible: text !== "" && !(entry.busy && entry.noting)
        text: entry.values.note
        wrapMode: Text.Wrap
        color: Theme.faint
        font.italic: true
        bottomPadding: 6
    }
    Row {
        width: parent.width
        visible: entry.busy && entry.noting
        spacing: 12
        bottomPadding: 8

        Field {
            id: note
            objectName: "field-note"
            width: parent.width - save.width - drop.width - 2 * parent.spacing
            label: qsTr("Note on this run")
            text: entry.values.note
            onTyped: text => note.text = text
            onAccepted: entry.noted(note.text)
        }
        InkButton {
            id: save
            objectName: "saveNote"
            anchors.bottom: note.bottom
            strong: true
            text: qsTr("Keep")
            onClicked: entry.noted(note.text)
        }
        InkButton {
            id: drop
            anchors.bottom: note.bottom
            text: qsTr("Leave it")
            onClicked: entry.busyWanted(false)
        }
    }
    Flow {
        width: parent.width
        visible: entry.busy && !entry.noting
        spacing: 12
        bottomPadding: 8

        InkText {
            height: Theme.touch
            verticalAlignment: Text.AlignVCenter
            text: qsTr("It will count as never played, and cannot be brought back.")
        }
        InkButton {
            id: keep
            objectName: "keepEntry"
            text: qsTr("Leave it")
            onClicked: entry.busyWanted(false)
        }
        InkButton {
            objectName: "takeEntryBackNow"
            text: qsTr("Take it back")
            ink: Theme.miss
            line: Theme.miss
            onClicked: entry.takenBack()
        }
    }
}
