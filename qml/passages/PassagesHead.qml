// SPDX-License-Identifier: GPL-3.0-or-later
// The heading of the passages, with the ways to new ones; what is seldom needed is in one menu.
import QtQuick
import Piolo

Item {
    id: head

    required property PassageListModel passages
    property bool readOnly: false
    property bool narrow: false

    /// A set needs two passages. Its button goes into the menu where there is no room for it.
    readonly property bool severalPassages: passages.total > 1
    readonly property bool setInMenu: severalPassages && width < 960
    readonly property var setItem: ({value: "set", text: qsTrId("set.title")})

    signal wanted(string what)

    implicitHeight: narrow ? title.y + title.height + 12 + ways.height : 16 + ways.height

    InkText {
        id: title
        y: head.narrow ? 12 : 16 + (Theme.touch - height) / 2
        text: qsTrId("passages.title")
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkText {
        anchors.left: title.right
        anchors.leftMargin: Theme.gap
        anchors.baseline: title.baseline
        visible: x + width < click.x
        text: head.passages.total > 0 ? Formatter.passages(head.passages.total) : ""
        color: Theme.faint
    }
    InkButton {
        id: click
        objectName: "justAClick"
        x: (head.narrow ? parent.width : ways.x - ways.spacing) - width
        y: head.narrow ? title.y + (title.height - height) / 2 : ways.y
        text: qsTrId("click.title")
        onClicked: head.wanted("click")
    }
    Flow {
        id: ways

        readonly property real turnWidth: turn.visible ? turn.width + spacing : 0

        x: head.narrow ? 0 : parent.width - width
        width: head.narrow ? parent.width : Math.min(parent.width, more.width + turnWidth + score.width + fresh.width + 2 * spacing)
        anchors.bottom: parent.bottom
        spacing: 12

        Choice {
            id: more
            objectName: "more"
            width: 120
            bare: true
            label: qsTrId("passages.more")
            prefix: label
            options: (head.setInMenu ? [head.setItem] : []).concat([
                {value: "files", text: qsTrId("passages.files")},
                {value: "paper", text: qsTrId("passages.on-paper")},
                {value: "removed", text: head.passages.removedToo ? qsTrId("passages.hide-removed") : qsTrId("passages.show-removed")}
            ])
            onChosen: what => head.wanted(what)
        }
        InkButton {
            id: turn
            objectName: "inTurn"
            visible: head.severalPassages && !head.setInMenu
            text: head.setItem.text
            onClicked: head.wanted(head.setItem.value)
        }
        InkButton {
            id: score
            objectName: "musicFile"
            text: qsTrId("passages.from-score")
            enabled: !head.readOnly
            onClicked: head.wanted("music")
        }
        InkButton {
            id: fresh
            objectName: "newPassage"
            text: qsTrId("passages.new")
            mark: "+"
            ground: Theme.accent
            ink: Theme.accentInk
            enabled: !head.readOnly
            onClicked: head.wanted("new")
        }
    }
}
