// SPDX-License-Identifier: GPL-3.0-or-later
// A number that is changed in steps, with its text.
import QtQuick
import QtQuick.Templates as T

Column {
    id: stepper

    property string label: ""
    property int value: 0
    property int from: 0
    property int to: 100
    property int step: 1
    /// The text for the value.
    property string words: ""
    /// Its label is for screen readers only, because there is one above or beside it.
    property bool bare: false

    signal moved(int value)
    signal focusInside

    spacing: 4

    InkText {
        width: parent.width
        visible: !stepper.bare
        text: stepper.label
        color: Theme.faint
        font.pixelSize: Theme.small
        wrapMode: Text.Wrap
        Accessible.ignored: true
    }
    T.SpinBox {
        id: box
        width: Math.min(parent.width, 240)
        implicitHeight: Theme.touch
        onActiveFocusChanged: if (activeFocus) stepper.focusInside()
        from: stepper.from
        to: stepper.to
        stepSize: stepper.step
        value: stepper.value
        onValueModified: stepper.moved(value)
        Accessible.role: Accessible.SpinBox
        Accessible.name: stepper.label
        Accessible.description: stepper.words

        background: Rectangle {
            radius: 8
            color: Theme.card
            border.color: box.activeFocus ? Theme.focus : Theme.faint
            border.width: box.activeFocus ? 2 : 1
        }
        contentItem: InkText {
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            text: stepper.words
            elide: Text.ElideRight
            leftPadding: Theme.touch
            rightPadding: Theme.touch
            Accessible.ignored: true
        }
        down.indicator: InkText {
            width: Theme.touch
            height: box.height
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            text: "−"
            font.pixelSize: 22
            color: box.value > box.from ? Theme.ink : Theme.edge
            Accessible.ignored: true
        }
        up.indicator: InkText {
            x: box.width - width
            width: Theme.touch
            height: box.height
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            text: "+"
            font.pixelSize: 22
            color: box.value < box.to ? Theme.ink : Theme.edge
            Accessible.ignored: true
        }
    }
}
