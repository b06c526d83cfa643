// SPDX-License-Identifier: GPL-3.0-or-later
// The changes that a passage file would make, and which of them to accept.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

Item {
    id: taking

    required property PassageExchange exchange
    property string typed: ""

    readonly property bool looked: exchange.file !== ""

    FileChoice {
        id: which
        width: parent.width
        part: "import"
        kind: "passages"
        label: qsTrId("files.open.file")
        placeholder: "~/sectional.piolo.json"
        text: taking.typed
        fault: taking.exchange.fault
        action: qsTrId("files.open")
        actionName: "import-read"
        ready: taking.typed.trim() !== "" && !taking.exchange.reading
        strong: ready && !taking.looked
        onTyped: text => taking.typed = text
        onAccepted: taking.exchange.read(taking.typed)
        onActed: taking.exchange.read(taking.typed)
        onPicked: path => {
            taking.typed = path;
            taking.exchange.read(path);
        }
    }
    InkText {
        id: said
        objectName: "import-summary"
        anchors.top: which.bottom
        anchors.topMargin: 12
        width: parent.width
        text: taking.exchange.reading ? qsTrId("files.reading")
            : taking.looked ? taking.exchange.summary : qsTrId("files.not-yet")
        color: taking.looked ? Theme.ink : Theme.faint
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.AlertMessage
    }
    ListView {
        id: list
        anchors.top: said.bottom
        anchors.topMargin: 8
        anchors.bottom: foot.top
        anchors.bottomMargin: 12
        width: parent.width
        clip: true
        spacing: 4
        boundsBehavior: Flickable.StopAtBounds
        model: taking.exchange
        Accessible.role: Accessible.List
        Accessible.name: qsTrId("files.changes")

        delegate: Column {
            id: row

            required property int index
            required property string name
            required property bool piece
            required property string state
            required property string changes
            required property bool edited
            required property bool askedFor
            required property bool ticked

            readonly property string words: piece ? qsTrId("files.piece").arg(state).arg(name) : qsTrId("files.passage").arg(state).arg(name)

            width: list.width - 14
            spacing: 2

            Tick {
                objectName: "take-" + row.index
                width: parent.width
                visible: row.askedFor
                text: row.words
                checked: row.ticked
                onTicked: on => taking.exchange.tick(row.index, on)
                onActiveFocusChanged: if (activeFocus) list.positionViewAtIndex(row.index, ListView.Contain)
            }
            InkText {
                width: parent.width
                visible: !row.askedFor
                leftPadding: 34
                topPadding: 8
                bottomPadding: 8
                text: row.words
                wrapMode: Text.Wrap
            }
            InkText {
                width: parent.width
                visible: row.edited
                leftPadding: 34
                text: qsTrId("files.edited-here")
                color: Theme.miss
                font.pixelSize: Theme.small
            }
            InkText {
                width: parent.width
                visible: row.changes !== ""
                leftPadding: 34
                bottomPadding: 6
                text: row.changes
                color: Theme.faint
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
            }
        }
        T.ScrollBar.vertical: ScrollMark {
        }
    }
    Column {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        spacing: 8
        visible: list.count > 0

        InkText {
            width: parent.width
            visible: taking.exchange.asked > 0
            text: qsTrId("files.tick.hint")
            color: Theme.faint
            font.pixelSize: Theme.small
            wrapMode: Text.WordWrap
        }
        Flow {
            width: parent.width
            spacing: 12

            InkButton {
                objectName: "import-take"
                text: qsTrId("files.take")
                strong: enabled
                enabled: taking.exchange.canTake
                onClicked: taking.exchange.take()
            }
            InkButton {
                objectName: "import-all"
                visible: taking.exchange.asked > 0
                enabled: taking.exchange.ticked < taking.exchange.asked
                text: qsTrId("files.tick-all")
                onClicked: taking.exchange.tickAll(true)
            }
            InkButton {
                objectName: "import-none"
                visible: taking.exchange.asked > 0
                enabled: taking.exchange.ticked > 0
                text: qsTrId("files.tick-none")
                onClicked: taking.exchange.tickAll(false)
            }
        }
    }
}
