// SPDX-License-Identifier: GPL-3.0-or-later
// Passages with a check box each; scales are added on request.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

Item {
    id: list

    required property PassagePicks picks

    InkText {
        id: counted
        anchors.left: parent.left
        anchors.verticalCenter: all.verticalCenter
        text: list.picks.words
        color: Theme.faint
    }
    InkButton {
        id: all
        objectName: "pickAll"
        anchors.right: none.left
        anchors.rightMargin: 8
        text: qsTrId("picks.all")
        enabled: list.picks.picked < list.picks.count
        Accessible.name: qsTrId("picks.all.spoken")
        onClicked: list.picks.pickAll(true)
    }
    InkButton {
        id: none
        objectName: "pickNone"
        anchors.right: parent.right
        text: qsTrId("picks.none")
        enabled: list.picks.picked > 0
        Accessible.name: qsTrId("picks.none.spoken")
        onClicked: list.picks.pickAll(false)
    }
    Tick {
        id: scales
        objectName: "pickScales"
        anchors.top: all.bottom
        width: parent.width
        height: visible ? implicitHeight : 0
        visible: list.picks.scales > 0
        text: qsTrId("picks.with-scales").arg(list.picks.scales)
        checked: list.picks.withScales
        onTicked: on => list.picks.withScales = on
    }
    ListView {
        id: view
        anchors.top: scales.bottom
        anchors.topMargin: 8
        anchors.bottom: parent.bottom
        width: parent.width
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: list.picks
        Accessible.role: Accessible.List
        Accessible.name: qsTrId("picks.spoken")

        delegate: Tick {
            required property int index
            required property string title
            required property string piece
            required property bool picked

            width: view.width - 14
            text: piece === "" ? title : qsTrId("picks.item").arg(title).arg(piece)
            checked: picked
            onTicked: on => list.picks.pick(index, on)
            onActiveFocusChanged: if (activeFocus) view.positionViewAtIndex(index, ListView.Contain)
        }
        T.ScrollBar.vertical: ScrollMark {
        }
    }
    InkText {
        anchors.centerIn: view
        visible: list.picks.count === 0
        text: qsTrId("picks.empty")
        color: Theme.faint
    }
}
