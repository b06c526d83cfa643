// SPDX-License-Identifier: GPL-3.0-or-later
// What else can be played than the drill: each choice begins at once.
import QtQuick
import Piolo

Choice {
    id: ways

    required property DrillModel drill

    objectName: "waysToPlay"
    bare: true
    label: qsTr("Other ways")
    prefix: label
    options: {
        const list = [{value: "silent", text: qsTr("Without the click")}];
        if (!drill.openEnded)
            list.push({value: "context", text: qsTr("In context")});
        list.push({value: "half", text: qsTr("At half tempo, %1").arg(drill.halfTempoText)});
        list.push({value: "seek", text: qsTr("Find the tempo, from %1 down").arg(drill.tempoText)});
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
