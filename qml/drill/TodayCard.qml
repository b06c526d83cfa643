// SPDX-License-Identifier: GPL-3.0-or-later
// Today's figures of one passage, and whether all of it is on disk.
import QtQuick
import QtQuick.Layouts
import Piolo

Card {
    id: card

    required property TodayFigures today
    property int unsaved: 0
    property bool recorded: true

    implicitHeight: figures.implicitHeight + 2 * Theme.gap

    ColumnLayout {
        id: figures
        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: 10

        InkText {
            text: qsTr("Where you stand")
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        Figure {
            Layout.fillWidth: true
            label: qsTr("Clean runs today")
            value: card.today.cleanText
        }
        Figure {
            Layout.fillWidth: true
            label: qsTr("Best with a full streak")
            value: card.today.bestText
        }
        Figure {
            Layout.fillWidth: true
            label: qsTr("Played today")
            value: card.today.timeText
        }
        Figure {
            Layout.fillWidth: true
            label: qsTr("Secure")
            value: card.today.secureText
        }
        Figure {
            Layout.fillWidth: true
            label: qsTr("Practice log")
            value: !card.recorded ? qsTr("not recorded")
                   : card.unsaved > 0 ? qsTr("%n not saved yet", "marks", card.unsaved) : qsTr("✓ saved")
        }
    }
}
