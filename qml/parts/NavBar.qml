// SPDX-License-Identifier: GPL-3.0-or-later
// The navigation: the screens for practice at the left, the others small at the right, and the way back to what is
// under way.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Rectangle {
    id: bar

    /// The screens to choose from: lists of {name, text, sign}.
    property var screens: []
    property var smallTabs: []
    /// The name of the current one.
    property string screen: ""
    property int minutes: 0
    /// What is under way on a screen that is not shown; "" if nothing is.
    property string now: ""
    property bool urgent: false

    /// What there is room for besides the screens.
    readonly property real spare: width - left.width - right.width - 3 * Theme.gap
    readonly property bool low: width < 700
    readonly property bool twoLines: urgent && spare < 240
    readonly property bool showsNow: now !== "" && (urgent || spare >= 160)
    readonly property int count: screens.length + smallTabs.length
    /// The Tab key reaches the current screen, or the first.
    readonly property int stop: {
        const place = screens.concat(smallTabs).findIndex(tab => tab.name === screen);
        return Math.max(0, place);
    }

    signal wanted(string screen)
    signal nowWanted()

    function tabAt(place) {
        return place < screens.length ? leftTabs.itemAt(place) : rightTabs.itemAt(place - screens.length);
    }
    function go(place, by) {
        tabAt((place + by + count) % count).forceActiveFocus(Qt.TabFocusReason);
    }

    implicitHeight: twoLines ? 56 + Theme.touch + 8 : 56
    color: Theme.card
    Accessible.role: Accessible.ToolBar
    Accessible.name: qsTrId("nav.screens")

    Row {
        id: left
        x: bar.low ? 6 : Theme.gap
        height: 56
        spacing: bar.low ? 0 : 4

        Repeater {
            id: leftTabs
            model: bar.screens

            NavTab {
                required property var modelData
                required property int index

                anchors.verticalCenter: parent.verticalCenter
                objectName: "tab-" + modelData.name
                text: modelData.text
                here: bar.screen === modelData.name
                stop: bar.stop === index
                onClicked: bar.wanted(modelData.name)
                onMoved: by => bar.go(index, by)
            }
        }
    }
    Row {
        id: right
        anchors.right: parent.right
        anchors.rightMargin: bar.low ? 6 : Theme.gap
        height: 56

        Repeater {
            id: rightTabs
            model: bar.smallTabs

            NavTab {
                required property var modelData
                required property int index

                anchors.verticalCenter: parent.verticalCenter
                objectName: "tab-" + modelData.name
                text: modelData.text
                small: true
                mark: bar.low ? modelData.sign : ""
                here: bar.screen === modelData.name
                stop: bar.stop === bar.screens.length + index
                onClicked: bar.wanted(modelData.name)
                onMoved: by => bar.go(bar.screens.length + index, by)
            }
        }
    }
    InkText {
        anchors.right: right.left
        anchors.rightMargin: Theme.gap
        height: 56
        verticalAlignment: Text.AlignVCenter
        visible: !bar.showsNow && implicitWidth < bar.spare
        text: bar.minutes === 0 ? "" : qsTrId("nav.today").arg(Formatter.duration(bar.minutes * 60000))
        color: Theme.faint
        font.pixelSize: Theme.small
    }
    InkButton {
        objectName: "now"
        x: bar.twoLines ? Theme.gap : right.x - Theme.gap - width
        y: bar.twoLines ? 56 : 6
        width: bar.twoLines ? bar.width - 2 * Theme.gap : Math.min(implicitWidth, bar.spare)
        implicitHeight: Theme.touch
        visible: bar.showsNow
        text: bar.now
        mark: bar.urgent ? "●" : "‹"
        oneLine: true
        strong: bar.urgent
        Accessible.name: qsTrId("nav.now").arg(bar.now)
        onClicked: bar.nowWanted()
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.edge
    }
}
