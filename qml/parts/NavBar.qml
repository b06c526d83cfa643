// SPDX-License-Identifier: GPL-3.0-or-later
// The navigation between screens.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

Rectangle {
    id: bar

    /// The screens to choose from: a list of {name, text}.
    property var screens: []
    /// The name of the current one.
    property string screen: ""
    property int minutes: 0
    /// What is under way on a screen that is not shown; "" if nothing is.
    property string now: ""

    signal wanted(string screen)
    signal nowWanted()

    implicitHeight: 56
    color: Theme.card
    Accessible.role: Accessible.ToolBar
    Accessible.name: qsTrId("nav.screens")

    Row {
        x: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        spacing: 4

        Repeater {
            model: bar.screens

            T.Button {
                id: tab

                required property var modelData

                readonly property bool here: bar.screen === modelData.name

                objectName: "tab-" + modelData.name
                text: modelData.text
                checkable: false
                implicitWidth: implicitContentWidth + 2 * Theme.gap
                implicitHeight: Theme.touch
                hoverEnabled: true
                Accessible.role: Accessible.PageTab
                Accessible.name: text
                Keys.onReturnPressed: clicked()
                Keys.onEnterPressed: clicked()
                Accessible.selected: here
                onClicked: bar.wanted(modelData.name)

                background: Rectangle {
                    radius: height / 2
                    color: tab.here ? Theme.ink : "transparent"
                    border.color: tab.visualFocus ? Theme.focus : tab.hovered ? Theme.edge : "transparent"
                    border.width: tab.visualFocus ? 3 : 1
                }
                contentItem: InkText {
                    text: tab.text
                    color: tab.here ? Theme.paper : Theme.ink
                    font.weight: Font.Medium
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                    Accessible.ignored: true
                }
            }
        }
    }
    InkText {
        anchors.right: parent.right
        anchors.rightMargin: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        visible: bar.now === ""
        text: bar.minutes === 0 ? "" : qsTrId("nav.today").arg(Formatter.duration(bar.minutes * 60000))
        color: Theme.faint
    }
    InkButton {
        objectName: "now"
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        visible: bar.now !== ""
        text: bar.now
        strong: true
        implicitHeight: Theme.touch
        onClicked: bar.nowWanted()
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.edge
    }
}
