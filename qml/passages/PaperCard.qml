// SPDX-License-Identifier: GPL-3.0-or-later
// Practice on paper: printing a sheet, and entering one that was ticked.
import QtQuick
import Piolo

Card {
    id: card

    required property PracticeSheet sheet
    required property PassagePicks picks
    required property PaperRuns runs
    property string passage: ""
    property bool entering: false

    signal done()

    function begin() {
        picks.pickOnly(passage);
        runs.show(passage);
        back.forceActiveFocus(Qt.TabFocusReason);
    }

    Accessible.role: Accessible.Dialog
    Accessible.name: heading.text
    onPassageChanged: if (visible) {
        picks.pickOnly(passage);
        runs.show(passage);
    }

    InkText {
        id: heading
        x: 24
        y: Theme.gap
        width: back.x - x - 12
        text: card.entering && card.runs.open ? card.runs.title : qsTrId("paper.title")
        elide: Text.ElideRight
        font.pixelSize: 22
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkButton {
        id: back
        objectName: "paper-back"
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
        label: qsTrId("paper.what-to-do")
        options: [
            {value: false, text: qsTrId("paper.print")},
            {value: true, text: qsTrId("paper.enter")}
        ]
        value: card.entering
        onChosen: value => card.entering = value
    }
    PaperPrint {
        anchors.top: sides.bottom
        anchors.topMargin: 12
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        x: 24
        width: parent.width - 48
        visible: !card.entering
        sheet: card.sheet
        picks: card.picks
    }
    PaperEntry {
        anchors.top: sides.bottom
        anchors.topMargin: 12
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        x: 24
        width: Math.min(parent.width - 48, 760)
        visible: card.entering
        runs: card.runs
    }
}
