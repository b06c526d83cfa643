// SPDX-License-Identifier: GPL-3.0-or-later
// The result of the last run: a shape, a word and a colour.
import QtQuick
import Piolo

Item {
    id: feedback

    required property DrillModel drill
    property real size: 40

    readonly property bool missed: drill.feedback === DrillModel.Missed
    readonly property bool neutral: drill.feedback === DrillModel.TakenBack || drill.feedback === DrillModel.NothingToTakeBack || drill.feedback === DrillModel.PutBack
    readonly property color ink: missed ? Theme.miss : neutral ? Theme.faint : Theme.clean

    readonly property string sign: missed ? "▼" : neutral ? "↶" : drill.feedback === DrillModel.Clean ? "●" : "▲"

    visible: drill.feedback !== DrillModel.None
    Accessible.role: Accessible.AlertMessage
    Accessible.name: drill.text.feedback
    Accessible.ignored: drill.text.feedback === ""

    Rectangle {
        id: ground
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        height: Math.min(parent.height, feedback.size * 1.7)
        width: Math.min(parent.width, label.implicitWidth + feedback.size)
        radius: feedback.missed ? 0 : height / 2
        color: feedback.missed ? Theme.missWash : feedback.neutral ? Theme.card : Theme.cleanWash
        border.color: feedback.ink
        border.width: 3

        InkText {
            id: label
            anchors.centerIn: parent
            width: Math.min(implicitWidth, parent.width - 8)
            text: qsTrId("parts.sign-word").arg(feedback.sign).arg(feedback.drill.text.feedback)
            color: feedback.ink
            font.pixelSize: feedback.size
            font.weight: Font.Bold
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 14
            Accessible.ignored: true
        }
    }
}
