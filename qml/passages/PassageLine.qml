// SPDX-License-Identifier: GPL-3.0-or-later
// A passage in the list, with its progress from start to target.
import QtQuick
import QtQuick.Templates as T
import Piolo

T.ItemDelegate {
    id: line

    required property string passageId
    required property string title
    required property string section
    required property string pieceName
    required property string tempoText
    required property string targetText
    required property string subdivisionText
    required property string standingText
    required property string spoken
    required property real share
    required property int streak
    required property int cleanRuns
    required property bool secure
    required property bool removed
    property bool chosen: false

    /// Under the heading of its piece, a name need not repeat the piece.
    readonly property string ownTitle: {
        const rest = title.startsWith(pieceName) ? title.slice(pieceName.length) : "";
        return section !== "" && pieceName !== "" && /^[,:] \S/.test(rest) ? rest.slice(2) : title;
    }

    objectName: "passageLine"
    implicitHeight: 76
    opacity: removed ? 0.6 : 1
    hoverEnabled: true
    Accessible.role: Accessible.ListItem
    Accessible.name: spoken
    Accessible.selected: chosen

    background: Rectangle {
        radius: Theme.radius
        color: line.chosen ? Theme.accentWash : Theme.card
        border.color: line.visualFocus ? Theme.focus : line.chosen ? Theme.accent : line.hovered ? Theme.faint : Theme.edge
        border.width: line.visualFocus ? 3 : line.chosen ? 2 : 1
    }

    contentItem: PassageFace {
        title: line.ownTitle
        note: line.section === "" && line.pieceName !== "" ? qsTrId("passages.line").arg(line.pieceName).arg(line.standingText) : line.standingText
        tempoText: line.tempoText
        targetText: line.targetText
        subdivisionText: line.subdivisionText
        share: line.share
        streak: line.streak
        cleanRuns: line.cleanRuns
        secure: line.secure
    }
}
