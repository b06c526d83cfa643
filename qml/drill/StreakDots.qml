// SPDX-License-Identifier: GPL-3.0-or-later
// Clean in a row: filled circles for those reached, rings for those to come. Many are shown as a number.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick

Item {
    id: dots

    property int streak: 0
    property int needed: 5
    property real size: 20
    property string words: ""
    readonly property bool countable: needed <= 10

    implicitWidth: countable ? row.implicitWidth : figures.implicitWidth
    implicitHeight: size

    Accessible.role: Accessible.Indicator
    Accessible.name: words

    Row {
        id: row
        visible: dots.countable
        anchors.centerIn: parent
        spacing: dots.size * 0.4

        Repeater {
            model: dots.countable ? dots.needed : 0

            Rectangle {
                required property int index
                width: dots.size
                height: dots.size
                radius: width / 2
                color: index < dots.streak ? Theme.clean : "transparent"
                border.color: Theme.clean
                border.width: Math.max(2, dots.size / 12)
            }
        }
    }

    Row {
        id: figures
        visible: !dots.countable
        anchors.centerIn: parent
        spacing: dots.size * 0.4

        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: dots.size
            height: dots.size
            radius: width / 2
            color: dots.streak > 0 ? Theme.clean : "transparent"
            border.color: Theme.clean
            border.width: Math.max(2, dots.size / 12)
        }
        InkText {
            anchors.verticalCenter: parent.verticalCenter
            text: qsTrId("drill.streak.spoken").arg(dots.streak).arg(dots.needed)
            color: Theme.clean
            font.pixelSize: dots.size
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }
    }
}
