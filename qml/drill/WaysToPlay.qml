// SPDX-License-Identifier: GPL-3.0-or-later
// What else can be played besides the drill: each choice starts at once.
import QtQuick
import Piolo

Choice {
    id: ways

    required property DrillModel drill

    objectName: "waysToPlay"
    bare: true
    label: qsTrId("drill.other-ways")
    prefix: label
    options: {
        const list = [{value: "silent", text: qsTrId("drill.without-click")}];
        if (!drill.openEnded)
            list.push({value: "context", text: qsTrId("drill.in-context")});
        list.push({value: "half", text: qsTrId("drill.half-tempo").arg(drill.text.halfTempo)});
        list.push({value: "seek", text: qsTrId("drill.find-tempo").arg(drill.text.tempo)});
        return list;
    }
    onChosen: value => {
        if (value === "silent")
            drill.playSilent();
        else if (value === "context")
            drill.playInContext();
        else if (value === "half")
            drill.playAtHalf();
        else
            drill.seek();
    }
}
