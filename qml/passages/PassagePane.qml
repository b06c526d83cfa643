// SPDX-License-Identifier: GPL-3.0-or-later
// Search, sorting, and the resulting list.
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
        width: order.x - Theme.gap
        focus: true
        label: qsTrId("passages.search")
        text: pane.passages.search
        onTyped: text => pane.passages.search = text
    }
    Choice {
        id: order
        objectName: "order"
        anchors.right: parent.right
        anchors.bottom: search.bottom
        width: Math.max(150, pane.width * 0.36)
        label: qsTrId("passages.order")
        options: [
            {value: "due", text: qsTrId("passages.by-date")},
            {value: "notPlayed", text: qsTrId("passages.by-rest")},
            {value: "farFromTarget", text: qsTrId("passages.by-climb")}
        ]
        value: pane.passages.sorting
        onChosen: value => pane.passages.sorting = value
    }
    PassageList {
        id: list
        anchors.top: search.bottom
        anchors.topMargin: 8
        anchors.bottom: parent.bottom
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
        text: pane.passages.total === 0 ? qsTrId("passages.none") : qsTrId("passages.none-found")
    }
}
