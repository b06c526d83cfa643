// SPDX-License-Identifier: GPL-3.0-or-later
// A text field: its name above it, and below it one line while the input is not valid.
import QtQuick
import QtQuick.Templates as T

Column {
    id: field

    property string label: ""
    property string text: ""
    property string placeholder: ""
    property string fault: ""
    property bool readOnly: false
    /// The label may be wider than the box.
    property real labelWidth: width

    /// Where the box is, below the label.
    readonly property real boxY: input.y
    readonly property alias holdsFocus: input.activeFocus

    signal typed(string text)
    signal accepted

    spacing: 4

    function take() {
        input.forceActiveFocus(Qt.TabFocusReason);
        input.selectAll();
    }

    InkText {
        width: field.labelWidth
        text: field.label
        color: Theme.faint
        font.pixelSize: Theme.small
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    T.TextField {
        id: input
        width: parent.width
        implicitHeight: Theme.touch
        leftPadding: 12
        rightPadding: 12
        verticalAlignment: TextInput.AlignVCenter
        text: field.text
        placeholderText: field.placeholder
        readOnly: field.readOnly
        color: Theme.ink
        selectionColor: Theme.accentWash
        selectedTextColor: Theme.ink
        font.family: Theme.family
        font.pixelSize: Theme.body
        selectByMouse: true
        Accessible.role: Accessible.EditableText
        Accessible.name: field.label
        Accessible.description: field.fault
        onTextEdited: field.typed(text)
        // A long text shows its beginning until the field is focused.
        onTextChanged: if (!activeFocus) cursorPosition = 0
        // Reached by Tab, it is typed over.
        onActiveFocusChanged: {
            if (!activeFocus)
                cursorPosition = 0;
            else if (focusReason === Qt.TabFocusReason || focusReason === Qt.BacktabFocusReason)
                selectAll();
        }
        onAccepted: field.accepted()

        background: Rectangle {
            radius: 8
            color: Theme.card
            border.color: input.activeFocus ? Theme.focus : field.fault !== "" ? Theme.miss : Theme.faint
            border.width: input.activeFocus || field.fault !== "" ? 2 : 1
        }
        InkText {
            anchors.fill: parent
            anchors.leftMargin: input.leftPadding
            anchors.rightMargin: input.rightPadding
            verticalAlignment: Text.AlignVCenter
            visible: input.text === ""
            text: input.placeholderText
            color: Theme.faint
            elide: Text.ElideRight
            Accessible.ignored: true
        }
    }
    InkText {
        width: parent.width
        visible: field.fault !== ""
        text: "▲ " + field.fault
        color: Theme.miss
        font.pixelSize: Theme.small
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
    }
}
