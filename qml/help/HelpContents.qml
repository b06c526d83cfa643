// SPDX-License-Identifier: GPL-3.0-or-later
// The help's chapters, and the way back.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T

Item {
    id: contents

    /// A list of {name, title}.
    property var chapters: []
    property int current: 0
    property bool leadsBack: false
    /// The chapters drop down, for want of width.
    property bool dropping: false

    signal chosen(string name)
    signal backWanted

    implicitHeight: chooser.y + chooser.height

    InkText {
        id: heading
        text: qsTrId("help.title")
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkButton {
        id: back
        objectName: "helpBack"
        anchors.right: parent.right
        anchors.verticalCenter: heading.verticalCenter
        visible: contents.leadsBack
        text: qsTrId("help.back")
        mark: "←"
        Accessible.name: qsTrId("parts.name-key").arg(qsTrId("help.back")).arg(qsTrId("help.esc"))
        onClicked: contents.backWanted()
    }
    Choice {
        id: chooser
        objectName: "chapters"
        y: Theme.touch + 8
        width: parent.width
        visible: contents.dropping
        bare: true
        label: qsTrId("help.chapters")
        options: contents.chapters.map(chapter => ({value: chapter.name, text: chapter.title}))
        value: contents.chapters[contents.current]?.name
        onChosen: value => contents.chosen(value)
    }
    ScrollColumn {
        id: list
        visible: !contents.dropping
        anchors.top: back.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        width: parent.width
        Accessible.role: Accessible.List
        Accessible.name: qsTrId("help.chapters")

        Repeater {
            model: contents.chapters.length

            T.Button {
                id: entry

                required property int index
                readonly property var chapter: contents.chapters[index]
                readonly property bool here: index === contents.current

                objectName: "chapter-" + chapter.name
                width: list.width - 16
                implicitHeight: Math.max(Theme.touch, implicitContentHeight + 16)
                text: chapter.title
                hoverEnabled: true
                Accessible.role: Accessible.PageTab
                Accessible.name: text
                Accessible.selected: here
                Keys.onReturnPressed: clicked()
                Keys.onEnterPressed: clicked()
                Keys.onUpPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
                Keys.onDownPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
                onClicked: contents.chosen(chapter.name)

                background: Rectangle {
                    radius: 8
                    color: entry.here ? Theme.ink : "transparent"
                    border.color: entry.visualFocus ? Theme.focus : entry.hovered ? Theme.faint : "transparent"
                    border.width: entry.visualFocus ? 3 : 1
                }
                contentItem: InkText {
                    leftPadding: 12
                    rightPadding: 12
                    verticalAlignment: Text.AlignVCenter
                    text: entry.text
                    color: entry.here ? Theme.paper : Theme.ink
                    font.weight: entry.here ? Font.DemiBold : Font.Normal
                    wrapMode: Text.Wrap
                    Accessible.ignored: true
                }
            }
        }
    }
}
