// SPDX-License-Identifier: GPL-3.0-or-later
// A drop-down list of values with their texts: {value, text}.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified type
import QtQuick
import QtQuick.Templates as T

Column {
    id: choice

    property string label: ""
    property var options: []
    property var value: undefined
    property string fault: ""
    /// Its label is for screen readers only, because the selected text is clear by itself.
    property bool bare: false

    /// Shown until something is selected.
    property string prompt: ""

    /// Shown before the selected text if there is no visible label.
    property string prefix: ""

    readonly property string chosenText: place >= 0 ? options[place].text : ""
    readonly property string shown: prefix === "" ? (place < 0 ? prompt : chosenText) : place < 0 ? prefix : qsTrId("parts.label-value").arg(prefix).arg(chosenText)
    readonly property int place: options.findIndex(option => option.value === value)

    /// The letters typed within the last second.
    property string typed: ""

    signal chosen(var value)

    function takeKeys() {
        box.forceActiveFocus(Qt.TabFocusReason);
    }

    /// The first option of which a word begins with `letters`, preferably the first word; -1 if there is none.
    function placeOf(letters: string): int {
        const wanted = letters.toLocaleLowerCase();
        const texts = choice.options.map(option => option.text.toLocaleLowerCase());
        const first = texts.findIndex(text => text.startsWith(wanted));
        return first >= 0 ? first : texts.findIndex(text => text.includes(" " + wanted));
    }
    function widest(): real {
        const widths = choice.options.map(option => metrics.advanceWidth(choice.marked(option.text, true)));
        return Math.ceil(Math.max(...widths)) + 2 * 12 + 2;
    }

    function marked(text: string, selected: bool): string {
        return (selected ? "✓ " : "") + text;
    }

    spacing: 4

    InkText {
        width: parent.width
        visible: text !== "" && !choice.bare
        text: choice.label
        color: Theme.faint
        font.pixelSize: Theme.small
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    Timer {
        id: forgotten
        interval: 1000
        onTriggered: choice.typed = ""
    }
    FontMetrics {
        id: metrics
        font.family: Theme.family
        font.pixelSize: Theme.body
    }
    T.ComboBox {
        id: box
        width: parent.width
        implicitHeight: Theme.touch
        model: choice.options
        textRole: "text"
        valueRole: "value"
        // The options are created again at every keystroke, so the index is set again after them.
        onModelChanged: currentIndex = choice.place
        Component.onCompleted: currentIndex = choice.place
        onActivated: index => choice.chosen(choice.options[index].value)
        // Letters typed one after the other choose the option that begins with them.
        Keys.priority: Keys.BeforeItem
        Keys.onPressed: event => {
            const letter = event.modifiers & ~Qt.ShiftModifier ? "" : event.text;
            const isText = letter > " " && letter !== "\x7f" || letter === " " && choice.typed !== "";
            const place = isText ? choice.placeOf(choice.typed + letter) : -1;
            if (place < 0)
                return;
            event.accepted = true;
            box.popup.close();
            choice.typed += letter;
            if (choice.options[place].value !== choice.value)
                choice.chosen(choice.options[place].value);
            forgotten.restart(); // what is chosen may take a while
        }
        Accessible.role: Accessible.ComboBox
        Accessible.name: choice.label
        Accessible.description: choice.fault !== "" ? choice.fault : choice.shown

        background: Rectangle {
            radius: 8
            color: box.down ? Theme.accentWash : Theme.card
            border.color: box.activeFocus ? Theme.focus : choice.fault !== "" ? Theme.miss : Theme.faint
            border.width: box.activeFocus || choice.fault !== "" ? 2 : 1
        }
        contentItem: InkText {
            leftPadding: 12
            rightPadding: 22
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.Wrap // a word that is too wide would be elided to nothing
            maximumLineCount: 2
            lineHeight: 0.9
            elide: Text.ElideRight
            text: choice.shown
            Accessible.ignored: true
        }
        indicator: InkText {
            x: box.width - width - 8
            anchors.verticalCenter: box.verticalCenter
            text: "▾"
            color: Theme.faint
            Accessible.ignored: true
        }
        delegate: T.ItemDelegate {
            id: line

            required property int index
            required property var modelData

            width: ListView.view.width
            implicitHeight: Theme.touch
            highlighted: box.highlightedIndex === index
            text: modelData.text
            Accessible.role: Accessible.ListItem
            Accessible.name: text

            background: Rectangle {
                color: line.highlighted ? Theme.accentWash : Theme.card
            }
            contentItem: InkText {
                leftPadding: 12
                rightPadding: 12
                verticalAlignment: Text.AlignVCenter
                elide: Text.ElideRight
                text: choice.marked(line.text, line.index === choice.place)
                Accessible.ignored: true
            }
        }
        // As wide as its longest option, inside the window.
        popup: T.Popup {
            y: box.height + 2
            margins: 8
            width: visible ? Math.min(Math.max(box.width, choice.widest()), box.Window.width - 2 * margins) : box.width
            height: Math.min(implicitContentHeight + 2, 8 * Theme.touch)
            padding: 1

            contentItem: ListView {
                clip: true
                implicitHeight: contentHeight
                model: box.delegateModel
                currentIndex: box.highlightedIndex
                boundsBehavior: Flickable.StopAtBounds
                T.ScrollBar.vertical: ScrollMark {
                }
            }
            background: Rectangle {
                color: Theme.card
                border.color: Theme.faint
                border.width: 1
            }
        }
    }
    InkText {
        width: parent.width
        visible: choice.fault !== ""
        text: "▲ " + choice.fault
        color: Theme.miss
        font.pixelSize: Theme.small
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
    }
    onValueChanged: box.currentIndex = place
}
