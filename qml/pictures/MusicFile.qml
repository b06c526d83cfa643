// SPDX-License-Identifier: GPL-3.0-or-later
// Bars from a MusicXML file for the form of a new passage: choose it, type its path or drop it here.
import QtQuick
import Piolo

Card {
    id: card

    required property MusicImport music

    signal done()

    property string typed: ""

    function begin() {
        path.take();
    }
    function takeBars() {
        if (card.music.summary === "")
            return;
        card.music.take();
        card.done();
    }
    readonly property bool read: music.file !== ""
    readonly property real third: (width - 48 - 2 * Theme.gap) / 3

    Accessible.role: Accessible.Dialog
    Accessible.name: heading.text

    DropArea {
        anchors.fill: parent
        keys: ["text/uri-list"]
        onDropped: drop => card.music.read(drop.urls[0])
    }
    Column {
        x: 24
        y: Theme.gap
        width: parent.width - 48
        spacing: 12

        InkText {
            id: heading
            text: qsTrId("score.title")
            font.pixelSize: 22
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        InkText {
            width: parent.width
            text: qsTrId("score.hint")
            color: Theme.faint
            wrapMode: Text.WordWrap
        }
        FileChoice {
            id: path
            width: parent.width
            part: "music"
            kind: "score"
            title: heading.text
            label: qsTrId("score.file")
            fault: card.read ? "" : card.music.fault
            text: card.typed
            onTyped: text => card.typed = text
            onAccepted: card.music.read(card.typed)
            onPicked: file => {
                card.typed = file;
                card.music.read(file);
            }
        }
        InkText {
            width: parent.width
            visible: card.read
            text: card.music.title
            font.weight: Font.DemiBold
            elide: Text.ElideRight
        }
        Row {
            visible: card.read
            spacing: Theme.gap

            Choice {
                objectName: "music-part"
                width: card.third
                label: qsTrId("score.part")
                options: card.music.parts
                value: card.music.part
                onChosen: value => card.music.part = value
            }
            Field {
                objectName: "music-from"
                width: card.third
                label: qsTrId("score.from-bar")
                text: card.music.from
                onTyped: text => card.music.from = text
                onAccepted: card.takeBars()
            }
            Field {
                objectName: "music-to"
                width: card.third
                label: qsTrId("score.to-bar")
                text: card.music.to
                fault: card.music.fault
                onTyped: text => card.music.to = text
                onAccepted: card.takeBars()
            }
        }
        InkText {
            objectName: "music-summary"
            width: parent.width
            visible: card.read
            text: card.music.summary === "" ? card.music.barsText : card.music.summary
            color: Theme.faint
            wrapMode: Text.WordWrap
        }
        Row {
            spacing: 12

            InkButton {
                objectName: "music-read"
                visible: !card.read
                text: qsTrId("score.read")
                strong: enabled
                enabled: card.typed !== ""
                onClicked: card.music.read(card.typed)
            }
            InkButton {
                objectName: "music-take"
                visible: card.read
                text: qsTrId("score.take")
                strong: enabled
                enabled: card.music.summary !== ""
                onClicked: card.takeBars()
            }
            InkButton {
                objectName: "music-cancel"
                text: qsTrId("parts.back")
                onClicked: card.done()
            }
        }
    }
}
