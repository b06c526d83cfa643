// SPDX-License-Identifier: GPL-3.0-or-later
// A file, by its typed path or by the platform's file dialog, and the button for what happens to it.
import QtQuick
import Piolo

Item {
    id: choice

    /// One of the kinds in src/models/files/file_kind.h.
    property string kind: ""
    property bool saving: false
    property string part: ""
    property string label: ""
    /// What the dialog is called.
    property string title: action === "" ? label : action
    property string placeholder: ""
    property string text: ""
    property string fault: ""
    /// What to do with a file that was typed; "": the button is elsewhere.
    property string action: ""
    property string actionName: ""
    property bool ready: true
    /// The button is the main one now.
    property bool strong: ready

    readonly property bool wide: width >= (action === "" ? 320 : 560)

    signal typed(string text)
    signal accepted
    signal acted
    /// `asked`: the dialog has asked already whether to replace a file of that name.
    signal picked(string path, bool asked)

    function take() {
        path.take();
    }
    function takeAction() {
        act.forceActiveFocus(Qt.TabFocusReason);
    }

    implicitHeight: wide ? path.height : path.height + 8 + buttons.height

    Field {
        id: path
        objectName: choice.part + "-path"
        width: choice.wide ? parent.width - buttons.width - 12 : parent.width
        label: choice.label
        placeholder: choice.placeholder
        text: choice.text
        fault: choice.fault
        onTyped: text => choice.typed(text)
        onAccepted: choice.accepted()
    }
    Row {
        id: buttons
        x: choice.wide ? parent.width - width : 0
        y: choice.wide ? 21 : path.height + 8
        spacing: 12

        InkButton {
            id: ask
            objectName: choice.part + "-choose"
            text: qsTrId("files.choose")
            strong: choice.text.trim() === ""
            Accessible.description: choice.label
            onClicked: {
                dialog.active = true;
                (dialog.item as FileAsking).ask(choice.text);
            }
        }
        InkButton {
            id: act
            objectName: choice.actionName
            visible: choice.action !== ""
            text: choice.action
            strong: choice.strong
            enabled: choice.ready
            onClicked: choice.acted()
        }
    }
    Loader {
        id: dialog
        active: false
        source: "FileAsking.qml"
        onLoaded: {
            const asking = item as FileAsking;
            asking.kind = choice.kind;
            asking.title = Qt.binding(() => choice.title);
            asking.saving = choice.saving;
        }
    }
    Connections {
        target: dialog.item as FileAsking
        function onPicked(file: url, asked: bool): void {
            choice.picked(FileDialogs.path(file), asked);
        }
        function onClosed(): void {
            ask.forceActiveFocus(Qt.TabFocusReason);
        }
    }
}
