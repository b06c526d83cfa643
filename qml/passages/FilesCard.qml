// SPDX-License-Identifier: GPL-3.0-or-later
// Passage files: writing one for another player, and reviewing one before importing it.
import QtQuick
import Piolo

Card {
    id: card

    required property PassageExchange exchange
    required property PassagePicks picks
    property string passage: ""
    property bool reading: false

    signal done()

    function begin() {
        picks.pickOnly(passage);
        back.forceActiveFocus(Qt.TabFocusReason);
    }

    Accessible.role: Accessible.Dialog
    Accessible.name: heading.text
    onPassageChanged: if (visible) picks.pickOnly(passage)

    DropArea {
        anchors.fill: parent
        keys: ["text/uri-list"]
        onDropped: drop => {
            card.reading = true;
            card.exchange.read(drop.urls[0]);
        }
    }
    InkText {
        id: heading
        x: 24
        y: Theme.gap
        text: qsTrId("files.title")
        font.pixelSize: 22
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkButton {
        id: back
        objectName: "files-back"
        anchors.right: parent.right
        anchors.rightMargin: 24
        y: 12
        text: qsTrId("parts.back")
        onClicked: card.done()
    }
    Pills {
        id: sides
        x: 24
        y: 64
        width: parent.width - 48
        label: qsTrId("files.what-to-do")
        options: [
            {value: false, text: qsTrId("files.export")},
            {value: true, text: qsTrId("files.import")}
        ]
        value: card.reading
        onChosen: value => card.reading = value
    }
    Item {
        anchors.top: sides.bottom
        anchors.topMargin: 12
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        x: 24
        width: parent.width - 48
        visible: !card.reading

        InkText {
            id: about
            width: parent.width
            text: qsTrId("files.export.hint")
            color: Theme.faint
            wrapMode: Text.WordWrap
        }
        PickList {
            anchors.top: about.bottom
            anchors.topMargin: 12
            anchors.bottom: saving.top
            anchors.bottomMargin: 12
            width: parent.width
            picks: card.picks
        }
        SaveLine {
            id: saving
            anchors.bottom: parent.bottom
            width: parent.width
            part: "export"
            kind: "passages"
            label: qsTrId("files.export.file")
            placeholder: "~/sectional.piolo.json"
            button: qsTrId("files.export.write")
            ready: card.picks.picked > 0
            onWanted: path => saving.report(card.exchange.write(path))
        }
    }
    FileTaking {
        anchors.top: sides.bottom
        anchors.topMargin: 12
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        x: 24
        width: parent.width - 48
        visible: card.reading
        exchange: card.exchange
    }
}
