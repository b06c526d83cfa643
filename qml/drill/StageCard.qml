// SPDX-License-Identifier: GPL-3.0-or-later
// The passage's stage, the evidence for the next one, and the player's choice.
import QtQuick
import QtQuick.Layouts
import Piolo

Card {
    id: card

    required property DrillModel drill
    property bool recorded: true

    readonly property StageFigures stages: drill.stages

    function choices(names) {
        const list = [];
        for (let place = 0; place < names.length; ++place)
            list.push({value: place, text: names[place]});
        return list;
    }

    implicitHeight: lines.implicitHeight + 2 * Theme.gap

    ColumnLayout {
        id: lines
        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: 8

        InkText {
            text: qsTrId("stage.title")
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        Choice {
            objectName: "stage"
            Layout.fillWidth: true
            label: qsTrId("stage.spoken")
            bare: true
            enabled: card.recorded
            options: card.choices(card.stages.names)
            value: card.stages.stage
            onChosen: place => card.drill.setStage(place)
        }
        InkText {
            objectName: "evidence"
            Layout.fillWidth: true
            text: card.stages.evidence
            color: Theme.faint
            wrapMode: Text.WordWrap
        }
        InkButton {
            objectName: "nextStage"
            Layout.fillWidth: true
            visible: card.stages.proposed !== ""
            enabled: card.recorded
            text: qsTrId("stage.next").arg(card.stages.proposed)
            onClicked: card.drill.setStage(card.stages.stage + 1)
        }
    }
}
