// SPDX-License-Identifier: GPL-3.0-or-later
// The passage's stage, the evidence for the next one, and the player's choice.
import QtQuick
import Piolo

Column {
    id: part

    required property DrillModel drill
    property bool recorded: true

    readonly property StageFigures stages: drill.stages

    function choices(names) {
        const list = [];
        for (let place = 0; place < names.length; ++place)
            list.push({value: place, text: names[place]});
        return list;
    }

    spacing: 8

    Choice {
        objectName: "stage"
        width: parent.width
        label: qsTrId("stage.title")
        enabled: part.recorded
        options: part.choices(part.stages.names)
        value: part.stages.stage
        onChosen: place => part.drill.setStage(place)
    }
    InkText {
        objectName: "evidence"
        width: parent.width
        text: part.stages.evidence
        color: Theme.faint
        font.pixelSize: Theme.small
        wrapMode: Text.WordWrap
    }
    InkButton {
        objectName: "nextStage"
        width: parent.width
        visible: part.stages.proposed !== ""
        enabled: part.recorded
        text: qsTrId("stage.next").arg(part.stages.proposed)
        onClicked: part.drill.setStage(part.stages.stage + 1)
    }
}
