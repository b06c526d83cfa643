// SPDX-License-Identifier: GPL-3.0-or-later
// One run of the log: its mark can be changed, a note can be added, and it can be taken back.
import QtQuick
import Piolo

Column {
    id: entry

    property var values: ({})
    property bool changeable: true
    /// Its note is being written.
    property bool busy: false
    /// It was just changed with these buttons, after which the list was filled again.
    property bool again: false

    readonly property bool compact: width < 720
    readonly property string story: values.mark === "" ? values.detail
        : values.detail === "" ? values.mark : qsTrId("log.entry.line").arg(values.mark).arg(values.detail)

    signal busyWanted(bool on)
    signal takenBack
    signal corrected(bool clean)
    signal noted(string text)

    function writeNote() {
        busyWanted(true);
        note.take();
    }

    /// The button that undoes the change, or any.
    function takeFocus() {
        const button = cleanButton.visible ? cleanButton : missedButton.visible ? missedButton : writeButton;
        if (button.visible)
            button.forceActiveFocus(Qt.OtherFocusReason);
    }

    Component.onCompleted: if (again) takeFocus()

    Item {
        width: parent.width
        implicitHeight: entry.compact && buttons.visible ? Theme.touch + buttons.height + 4 : Math.max(Theme.touch, buttons.height)

        InkText {
            id: when
            height: Theme.touch
            verticalAlignment: Text.AlignVCenter
            text: entry.values.time
            color: Theme.faint
        }
        MarkRow {
            id: shape
            anchors.left: when.right
            anchors.leftMargin: 12
            anchors.verticalCenter: when.verticalCenter
            width: 20
            marks: entry.values.marks
        }
        InkText {
            anchors.left: shape.right
            anchors.leftMargin: 8
            anchors.right: entry.compact || !buttons.visible ? parent.right : buttons.left
            anchors.rightMargin: 12
            anchors.verticalCenter: when.verticalCenter
            elide: Text.ElideRight
            wrapMode: Text.Wrap
            maximumLineCount: 2
            lineHeight: 0.9
            text: entry.story
        }
        Flow {
            id: buttons
            x: entry.compact ? 0 : parent.width - width
            y: entry.compact ? Theme.touch : 0
            width: entry.compact ? parent.width : undefined
            visible: entry.changeable && !entry.busy
            spacing: 8

            InkButton {
                id: cleanButton
                objectName: "setClean"
                visible: entry.values.canBeClean
                text: qsTrId("log.entry.was-clean")
                Accessible.name: qsTrId("log.entry.was-clean.spoken").arg(entry.values.spoken)
                onClicked: entry.corrected(true)
            }
            InkButton {
                id: missedButton
                objectName: "setMissed"
                visible: entry.values.canBeMissed
                text: qsTrId("log.entry.was-missed")
                Accessible.name: qsTrId("log.entry.was-missed.spoken").arg(entry.values.spoken)
                onClicked: entry.corrected(false)
            }
            InkButton {
                id: writeButton
                objectName: "writeNote"
                visible: entry.values.canNote
                text: entry.values.note === "" ? qsTrId("log.entry.note") : qsTrId("log.entry.edit-note")
                Accessible.name: qsTrId("log.entry.note.spoken").arg(entry.values.spoken)
                onClicked: entry.writeNote()
            }
            InkButton {
                objectName: "takeEntryBack"
                text: qsTrId("log.entry.take-back")
                Accessible.name: qsTrId("log.entry.take-back.spoken").arg(entry.values.spoken)
                onClicked: entry.takenBack()
            }
        }
    }
    InkText {
        x: when.width + 12
        width: parent.width - x
        visible: text !== "" && !entry.busy
        text: entry.values.note
        wrapMode: Text.Wrap
        color: Theme.faint
        font.italic: true
        bottomPadding: 6
    }
    Column {
        width: parent.width
        visible: entry.busy
        spacing: 8
        bottomPadding: 8

        Field {
            id: note
            objectName: "field-note"
            width: parent.width
            label: qsTrId("log.entry.note.title")
            text: entry.values.note
            onTyped: text => note.text = text
            onAccepted: entry.noted(note.text)
        }
        Row {
            spacing: 8

            InkButton {
                objectName: "saveNote"
                strong: true
                text: qsTrId("log.entry.keep")
                onClicked: entry.noted(note.text)
            }
            InkButton {
                text: qsTrId("log.entry.leave")
                onClicked: entry.busyWanted(false)
            }
        }
    }
}
