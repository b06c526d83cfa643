// SPDX-License-Identifier: GPL-3.0-or-later
// The tempo in a large figure that can be typed into.
import QtQuick
import QtQuick.Templates as T
import Piolo

Item {
    id: figure

    required property ClickModel click

    /// The typing is done.
    signal done()

    function show() {
        input.text = Qt.binding(() => figure.click.tempo);
    }

    InkText {
        id: sign
        anchors.right: input.left
        anchors.rightMargin: 8
        anchors.verticalCenter: parent.verticalCenter
        text: qsTrId("click.is").arg(figure.click.beatSign)
        color: Theme.faint
        font.pixelSize: Math.min(36, Math.max(18, figure.height * 0.22))
        Accessible.ignored: true
    }
    T.TextField {
        id: input
        objectName: "clickTempo"
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.horizontalCenterOffset: sign.width / 2
        width: Math.min(parent.width - sign.width - 24, height * 2.2)
        height: parent.height
        horizontalAlignment: TextInput.AlignHCenter
        verticalAlignment: TextInput.AlignVCenter
        text: figure.click.tempo
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
        Accessible.name: qsTrId("click.tempo")
        Accessible.description: figure.click.tempoLine
        // What is typed replaces the tempo, however the figure was reached.
        onActiveFocusChanged: if (activeFocus) selectAll()
        onReleased: if (selectedText === "") selectAll()
        onEditingFinished: {
            figure.click.type(text);
            figure.show();
        }
        onAccepted: figure.done()
        Keys.onEscapePressed: {
            figure.show();
            figure.done();
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
}
