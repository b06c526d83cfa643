// SPDX-License-Identifier: GPL-3.0-or-later
// A passage in the list: where it stands, on the way from start to target.
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
    readonly property bool roomy: width >= 430

    implicitHeight: 72
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

    contentItem: Item {
        Column {
            id: names
            anchors.verticalCenter: parent.verticalCenter
            anchors.left: parent.left
            anchors.leftMargin: Theme.gap
            anchors.right: tempi.left
            anchors.rightMargin: 8
            spacing: 4

            Words {
                width: parent.width
                text: line.title
                font.weight: Font.DemiBold
                elide: Text.ElideRight
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                text: line.section === "" && line.pieceName !== "" ? qsTr("%1 · %2").arg(line.pieceName).arg(line.standingText) : (line.secure ? "✓ " : "") + line.standingText
                color: line.secure ? Theme.clean : Theme.faint
                font.pixelSize: Theme.small
                elide: Text.ElideRight
                Accessible.ignored: true
            }
        }
        Column {
            id: tempi
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: way.left
            anchors.rightMargin: Theme.gap
            width: line.roomy ? 130 : 118
            spacing: 2

            Row {
                spacing: 8

                Words {
                    id: tempo
                    text: line.tempoText
                    font.pixelSize: 22
                    font.weight: Font.Bold
                    Accessible.ignored: true
                }
                Words {
                    anchors.baseline: tempo.baseline
                    text: qsTr("of %1", "the tempo now, of the target").arg(line.targetText)
                    color: Theme.faint
                    font.pixelSize: Theme.small
                    Accessible.ignored: true
                }
            }
            Words {
                width: parent.width
                text: line.subdivisionText
                color: Theme.faint
                font.pixelSize: Theme.small
                elide: Text.ElideRight
                Accessible.ignored: true
            }
        }
        Column {
            id: way
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: Theme.gap
            width: line.roomy ? Math.min(170, line.width * 0.26) : 76
            spacing: 10

            Rectangle {
                width: parent.width
                height: 10
                radius: 5
                color: Theme.rung

                Rectangle {
                    width: Math.max(line.share > 0 ? parent.height : 0, line.share * parent.width)
                    height: parent.height
                    radius: 5
                    color: line.secure ? Theme.clean : Theme.accent
                }
            }
            StreakDots {
                streak: line.streak
                needed: line.cleanRuns
                size: line.cleanRuns > 6 ? 8 : line.roomy ? 12 : 9
                words: Formatter.streak(line.streak, line.cleanRuns)
                Accessible.ignored: true
            }
        }
    }
}
