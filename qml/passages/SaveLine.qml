// SPDX-License-Identifier: GPL-3.0-or-later
// The name of a file to write, the button that writes it, and the result.
import QtQuick

Column {
    id: line

    property string label: ""
    property string placeholder: ""
    property string button: ""
    property string part: ""
    property bool ready: true

    property string typed: ""
    property string fault: ""
    property string savedAs: ""

    /// Answer with report().
    signal wanted(string path)

    function take() {
        path.take();
    }
    function save() {
        if (typed.trim() === "" || !ready)
            return;
        wanted(typed);
    }
    /// "" if the file was written, otherwise one sentence.
    function report(sentence) {
        fault = sentence;
        savedAs = sentence === "" ? typed : "";
    }

    spacing: 6

    Row {
        width: parent.width
        spacing: 12

        Field {
            id: path
            objectName: line.part + "-path"
            width: parent.width - now.width - parent.spacing
            label: line.label
            placeholder: line.placeholder
            fault: line.fault
            text: line.typed
            onTyped: text => {
                line.typed = text;
                line.fault = "";
                line.savedAs = "";
            }
            onAccepted: line.save()
        }
        InkButton {
            id: now
            objectName: line.part + "-save"
            y: 21
            strong: enabled
            enabled: line.ready && line.typed.trim() !== ""
            text: line.button
            onClicked: line.save()
        }
    }
    InkText {
        width: parent.width
        visible: line.savedAs !== ""
        text: qsTrId("form.saved").arg(line.savedAs)
        elide: Text.ElideMiddle
        Accessible.role: Accessible.AlertMessage
    }
}
