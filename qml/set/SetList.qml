// SPDX-License-Identifier: GPL-3.0-or-later
// The passages to choose from, below what was played last; each choice shows its place in the set.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

ListView {
    id: list

    required property SetModel set

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    model: set.picks
    Accessible.role: Accessible.List
    Accessible.name: qsTrId("picks.spoken")

    header: SetResults {
        width: list.width - 14
        results: list.set.results
        // What it says comes first, but the list cannot move while it is being made.
        onHeightChanged: Qt.callLater(list.positionViewAtBeginning)
    }
    delegate: Item {
        id: row

        required property int index
        required property string title
        required property string piece
        required property int place

        // Most titles begin with their piece.
        readonly property string words: title.includes(piece) ? title : qsTrId("picks.item").arg(title).arg(piece)

        width: list.width - 14
        height: tick.height

        Tick {
            id: tick
            objectName: "pick-" + row.index
            width: parent.width - 40
            text: row.words
            checked: row.place > 0
            Accessible.name: row.place > 0 ? qsTrId("set.picked").arg(row.words).arg(row.place) : row.words
            onTicked: on => {
                if (!list.set.picks.pick(row.index, on))
                    checked = Qt.binding(() => row.place > 0);
            }
            onActiveFocusChanged: if (activeFocus) list.positionViewAtIndex(row.index, ListView.Contain)
        }
        Rectangle {
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            width: 32
            height: 32
            radius: 16
            visible: row.place > 0
            color: Theme.accentWash

            InkText {
                anchors.centerIn: parent
                text: row.place
                font.weight: Font.Bold
                Accessible.ignored: true
            }
        }
    }
    T.ScrollBar.vertical: ScrollMark {
    }
}
