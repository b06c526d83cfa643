// SPDX-License-Identifier: GPL-3.0-or-later
// The instrument for which scales are written, found by family or by name, its range, and the random order of keys.
import QtQuick
import Piolo

ScrollColumn {
    id: side

    required property ScaleChoices choices

    signal done()

    function begin() {
        search.text = "";
        aim();
        if (proposal.visible)
            proposal.forceActiveFocus(Qt.TabFocusReason);
        else
            search.take();
    }
    function aim() {
        const first = choices.firstFound(search.text);
        list.current = search.text.trim() !== "" || choices.instrument === "" ? first : choices.instrument;
    }
    /// The first instrument leads straight to its grid.
    function choose(value) {
        const first = !choices.ready;
        choices.instrument = value;
        if (first && choices.ready)
            done();
    }

    spacing: Theme.gap
    onVisibleChanged: if (visible) begin()
    Component.onCompleted: if (visible) begin()

    SettingsCard {
        width: parent.width
        title: qsTrId("scales.instrument.title")
        note: side.choices.readOnly ? qsTrId("scales.instrument.read-only") : qsTrId("scales.instrument.hint")

        InkButton {
            id: proposal
            objectName: "proposedInstrument"
            visible: side.choices.proposed !== "" && !side.choices.readOnly
            text: side.choices.proposedText
            key: qsTrId("instruments.as-in").arg(side.choices.proposedBy)
            strong: !side.choices.ready
            onClicked: side.choose(side.choices.proposed)
        }
        Field {
            id: search
            objectName: "instrumentSearch"
            width: Math.min(parent.width, 440)
            visible: !side.choices.readOnly
            label: qsTrId("instruments.search")
            onTyped: text => {
                search.text = text;
                side.aim();
            }
            onAccepted: if (list.current !== "") side.choose(list.current)
            Keys.onUpPressed: list.move(-1)
            Keys.onDownPressed: list.move(1)
        }
        InkText {
            width: parent.width
            visible: list.values.length === 0
            text: qsTrId("instruments.none").arg(search.text)
            color: Theme.faint
            wrapMode: Text.WordWrap
            Accessible.role: Accessible.AlertMessage
        }
        InstrumentList {
            id: list
            objectName: "instruments"
            width: parent.width
            enabled: !side.choices.readOnly
            label: qsTrId("scales.instrument.name")
            families: side.choices.found(search.text)
            value: side.choices.instrument
            keyed: activeFocus || search.holdsFocus
            onPicked: value => side.choose(value)
            onReached: item => side.reveal(item)
        }
    }
    SettingsCard {
        width: parent.width
        visible: side.choices.ready
        title: qsTrId("scales.range-of-notes")

        Grid {
            id: notes
            width: parent.width
            columns: width > 560 ? 2 : 1
            spacing: 12

            Choice {
                objectName: "lowestNote"
                width: (notes.width - (notes.columns - 1) * notes.spacing) / notes.columns
                enabled: !side.choices.readOnly
                label: qsTrId("scales.instrument.lowest")
                options: side.choices.lowestNotes
                value: side.choices.lowest
                onChosen: value => side.choices.lowest = value
            }
            Choice {
                objectName: "highestNote"
                width: (notes.width - (notes.columns - 1) * notes.spacing) / notes.columns
                enabled: !side.choices.readOnly
                label: qsTrId("scales.instrument.highest")
                options: side.choices.highestNotes
                value: side.choices.highest
                onChosen: value => side.choices.highest = value
            }
        }
        InkText {
            width: parent.width
            text: qsTrId("scales.instrument.octave-hint")
            color: Theme.faint
            font.pixelSize: Theme.small
            wrapMode: Text.WordWrap
        }
        Flow {
            width: parent.width
            spacing: 12

            InkButton {
                objectName: "toGrid"
                strong: true
                text: qsTrId("scales.instrument.to-grid")
                onClicked: side.done()
            }
            InkButton {
                objectName: "drawAgain"
                enabled: !side.choices.readOnly
                text: qsTrId("scales.instrument.redraw")
                onClicked: side.choices.drawAgain()
            }
        }
    }
}
