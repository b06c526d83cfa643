// SPDX-License-Identifier: GPL-3.0-or-later
// Searching, sorting, and the list they give.
import QtQuick
import Piolo

FocusScope {
    id: pane

    required property PassageListModel passages
    property string chosen: ""

    signal choose(string passage)
    signal openDrill(string passage)

    Field {
        id: search
        objectName: "search"
        width: parent.width
        focus: true
        label: qsTr("Search by piece, name, bars or note")
        text: pane.passages.search
        onTyped: text => pane.passages.search = text
    }
    Pills {
        id: order
        anchors.top: search.bottom
        anchors.topMargin: 12
        width: parent.width
        label: qsTr("Order")
        options: [
            {value: "due", text: qsTr("next date")},
            {value: "notPlayed", text: qsTr("longest rested")},
            {value: "farFromTarget", text: qsTr("most to climb")}
        ]
        value: pane.passages.sorting
        onChosen: value => pane.passages.sorting = value
    }
    PassageList {
        id: list
        anchors.top: order.bottom
        anchors.topMargin: 8
        anchors.bottom: removedToo.top
        width: parent.width
        passages: pane.passages
        chosen: pane.chosen
        onChoose: passage => pane.choose(passage)
        onOpenDrill: passage => pane.openDrill(passage)
    }
    InkText {
        anchors.centerIn: list
        width: list.width - 2 * Theme.gap
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.Wrap
        visible: list.count === 0
        color: Theme.faint
        text: pane.passages.total === 0 ? qsTr("No passages yet: the form on the right makes the first.") : qsTr("No passage has all of these words.")
    }
    Tick {
        id: removedToo
        objectName: "removedToo"
        anchors.bottom: parent.bottom
        text: qsTr("Show removed ones")
        checked: pane.passages.removedToo
        onTicked: on => pane.passages.removedToo = on
    }
}
