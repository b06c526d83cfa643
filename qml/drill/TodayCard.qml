// SPDX-License-Identifier: GPL-3.0-or-later
// Today's figures of one passage, and whether everything is on disk.
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
            text: qsTrId("today.title")
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        Figure {
            Layout.fillWidth: true
            label: qsTrId("today.clean-runs")
            value: card.today.cleanText
        }
        Figure {
            Layout.fillWidth: true
            label: qsTrId("today.best")
            value: card.today.bestText
        }
        Figure {
            Layout.fillWidth: true
            label: qsTrId("today.played")
            value: card.today.timeText
        }
        Figure {
            Layout.fillWidth: true
            label: qsTrId("today.secure")
            value: card.today.secureText
        }
        Figure {
            Layout.fillWidth: true
            label: qsTrId("today.log")
            value: !card.recorded ? qsTrId("today.read-only")
                   : card.unsaved > 0 ? qsTrId("today.unsaved", card.unsaved) : qsTrId("today.saved")
        }
    }
}
