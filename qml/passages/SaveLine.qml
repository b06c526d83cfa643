// SPDX-License-Identifier: GPL-3.0-or-later
// The name of a file to write, the button that writes it, and the result.
import QtQuick
import Piolo

Column {
    id: line

    /// One of the kinds in src/models/files/file_kind.h.
    property string kind: ""
    property string label: ""
    property string placeholder: ""
    property string button: ""
    property string part: ""
    property bool ready: true

    property string typed: ""
    property string fault: ""
    property string savedAs: ""
    /// There is a file of that name, which the next press of the button replaces.
    property bool replacing: false

    /// Answer with report().
    signal wanted(string path)

    function take() {
        path.take();
    }
    function use(text) {
        typed = text;
        fault = "";
        savedAs = "";
        replacing = false;
    }
    function save(asked) {
        if (typed.trim() === "" || !ready)
            return;
        replacing = !asked && !replacing && typed !== savedAs && FileDialogs.exists(kind, typed);
        if (!replacing)
            wanted(typed);
    }
    /// "" if the file was written, otherwise one sentence.
    function report(sentence) {
        fault = sentence;
        savedAs = sentence === "" ? typed : "";
    }

    spacing: 6

    FileChoice {
        id: path
        width: parent.width
        part: line.part
        kind: line.kind
        saving: true
        label: line.label
        placeholder: line.placeholder
        fault: line.fault
        text: line.typed
        action: line.button
        actionName: line.part + "-save"
        ready: line.ready && line.typed.trim() !== ""
        onTyped: text => line.use(text)
        onAccepted: line.save(false)
        onActed: line.save(false)
        onPicked: (file, asked) => {
            line.use(file);
            line.save(asked);
            if (line.replacing)
                path.takeAction();
        }
    }
    InkText {
        objectName: line.part + "-said"
        width: parent.width
        visible: text !== ""
        text: line.replacing ? "▲ " + qsTrId("files.replaces").arg(line.button)
            : line.savedAs !== "" ? qsTrId("form.saved").arg(line.savedAs) : ""
        color: line.replacing ? Theme.miss : Theme.ink
        elide: Text.ElideMiddle
        Accessible.role: Accessible.AlertMessage
    }
}
