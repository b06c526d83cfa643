// SPDX-License-Identifier: GPL-3.0-or-later
// One run of the log: a note can be added, and a run recorded by mistake can be taken back after a question.
import QtQuick
import Piolo

Column {
    id: entry

    property var values: ({})
    property bool changeable: true
    property bool busy: false
    property bool noting: false

    readonly property string story: values.mark === "" ? values.detail
        : values.detail === "" ? values.mark : qsTrId("log.entry.line").arg(values.mark).arg(values.detail)

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
                text: entry.values.note === "" ? qsTrId("log.entry.note") : qsTrId("log.entry.edit-note")
                Accessible.name: qsTrId("log.entry.note.spoken").arg(entry.values.time)
                onClicked: entry.open(true)
            }
            InkButton {
                objectName: "takeEntryBack"
                implicitHeight: 36
                text: qsTrId("log.entry.take-back")
                Accessible.name: qsTrId("log.entry.take-back.spoken").arg(entry.values.time)
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
            label: qsTrId("log.entry.note.title")
            text: entry.values.note
            onTyped: text => note.text = text
            onAccepted: entry.noted(note.text)
        }
        InkButton {
            id: save
            objectName: "saveNote"
            anchors.bottom: note.bottom
            strong: true
            text: qsTrId("log.entry.keep")
            onClicked: entry.noted(note.text)
        }
        InkButton {
            id: drop
            anchors.bottom: note.bottom
            text: qsTrId("log.entry.leave")
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
            text: qsTrId("log.entry.take-back.hint")
        }
        InkButton {
            id: keep
            objectName: "keepEntry"
            text: qsTrId("log.entry.leave")
            onClicked: entry.busyWanted(false)
        }
        InkButton {
            objectName: "takeEntryBackNow"
            text: qsTrId("log.entry.take-back.confirm")
            ink: Theme.miss
            line: Theme.miss
            onClicked: entry.takenBack()
        }
    }
}
