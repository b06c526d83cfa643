// SPDX-License-Identifier: GPL-3.0-or-later
// A tempo in large figures that can be typed into.
import QtQuick
import QtQuick.Templates as T

T.TextField {
    id: input

    /// The tempo as it is now; what is typed replaces it once the typing is done.
    property string tempo: ""
    /// The keys for tapping a tempo work here, before those of the screen.
    property bool tappable: false

    signal typed(string tempo)
    /// The typing is done, by Return or Esc.
    signal done()

    function show() {
        text = Qt.binding(() => input.tempo);
    }

    horizontalAlignment: TextInput.AlignHCenter
    verticalAlignment: TextInput.AlignVCenter
    text: tempo
    inputMethodHints: Qt.ImhFormattedNumbersOnly
    validator: RegularExpressionValidator {
        regularExpression: /[0-9]{0,3}([.,][0-9]{0,3})?/
    }
    color: Theme.ink
    selectionColor: Theme.accentWash
    selectedTextColor: Theme.ink
    selectByMouse: true
    font.family: Theme.family
    font.weight: Font.Bold
    font.pixelSize: Math.max(20, Math.min(height * 0.9, width * (text.length > 3 ? 1.5 / text.length : 0.5)))
    Accessible.role: Accessible.EditableText
    // What is typed replaces the tempo, however the figure was reached.
    onActiveFocusChanged: if (activeFocus) selectAll()
    onReleased: if (selectedText === "") selectAll()
    onTempoChanged: {
        show();
        if (activeFocus)
            selectAll();
    }
    onEditingFinished: {
        if (text !== tempo)
            typed(text);
        show();
    }
    onAccepted: done()
    Keys.onEscapePressed: {
        show();
        done();
    }

    background: Item {
        Rectangle {
            y: Math.min(parent.height, (parent.height + input.font.pixelSize) / 2) - height
            width: parent.width
            height: input.activeFocus ? 3 : 1
            color: input.activeFocus ? Theme.focus : Theme.faint
        }
    }
}
