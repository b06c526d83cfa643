// SPDX-License-Identifier: GPL-3.0-or-later
// Practice time per day for four weeks, by kind, with missed days.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Card {
    id: card

    required property LogFigures figures

    /// The day whose figures are shown; -1 for none.
    property int pointed: -1

    function pointAt(x) {
        pointed = Math.max(0, Math.min(figures.days.length - 1, Math.floor(x / bars.width * figures.days.length)));
    }
    function step(by) {
        const last = figures.days.length - 1;
        pointed = pointed < 0 ? last : Math.max(0, Math.min(last, pointed + by));
    }

    InkText {
        id: title
        x: Theme.gap
        y: 14
        text: qsTrId("minutes.title")
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkText {
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        anchors.baseline: title.baseline
        text: card.figures.mostMinutes > 0 ? qsTrId("minutes.most").arg(card.figures.mostMinutes) : ""
        color: Theme.faint
        font.pixelSize: Theme.small
    }
    InkText {
        id: caption
        objectName: "minutesCaption"
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.margins: Theme.gap
        anchors.top: title.bottom
        anchors.topMargin: 2
        text: card.pointed < 0 ? card.figures.gapText : card.figures.days[card.pointed].spoken
        color: card.pointed < 0 ? Theme.faint : Theme.ink
        font.pixelSize: Theme.small
        wrapMode: Text.Wrap
        maximumLineCount: 2
        elide: Text.ElideRight
        Accessible.ignored: card.pointed >= 0 || text === ""
    }
    Row {
        id: bars
        objectName: "minutesBars"
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.margins: Theme.gap
        anchors.top: title.bottom
        anchors.topMargin: 48
        anchors.bottom: axis.top
        activeFocusOnTab: true
        Accessible.role: Accessible.List
        Accessible.name: qsTrId("minutes.spoken")
        Accessible.description: card.pointed < 0 ? "" : caption.text
        onActiveFocusChanged: card.pointed = -1
        Keys.onLeftPressed: card.step(-1)
        Keys.onRightPressed: card.step(1)

        Repeater {
            model: card.figures.days

            MinutesBar {
                required property int index
                required property var modelData

                width: bars.width / card.figures.days.length
                height: bars.height
                values: modelData
                pointed: card.pointed === index
            }
        }
    }
    MouseArea {
        /// A finger leaves nothing behind to point with: what it touched stays shown.
        property bool touched: false

        anchors.fill: bars
        hoverEnabled: true
        onPressed: mouse => {
            touched = mouse.source !== Qt.MouseEventNotSynthesized;
            card.pointAt(mouse.x);
        }
        onPositionChanged: mouse => {
            if (!pressed)
                touched = false;
            card.pointAt(mouse.x);
        }
        onEntered: card.pointAt(mouseX)
        onExited: if (!touched) card.pointed = -1
    }
    Rectangle {
        anchors.fill: bars
        anchors.margins: -3
        visible: bars.activeFocus
        color: "transparent"
        border.color: Theme.focus
        border.width: 2
        radius: 4
    }
    Item {
        id: axis
        anchors.left: bars.left
        anchors.right: bars.right
        anchors.bottom: legend.top
        anchors.bottomMargin: 6
        implicitHeight: since.implicitHeight

        InkText {
            id: since
            text: qsTrId("minutes.weeks-ago")
            color: Theme.faint
            font.pixelSize: Theme.small
        }
        InkText {
            anchors.right: parent.right
            text: qsTrId("minutes.today")
            color: Theme.faint
            font.pixelSize: Theme.small
        }
    }
    Flow {
        id: legend
        anchors.left: bars.left
        anchors.right: bars.right
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 12
        spacing: 12

        Repeater {
            model: [
                {words: qsTrId("minutes.drilled"), part: "runs"},
                {words: qsTrId("minutes.other-runs"), part: "apart"},
                {words: qsTrId("minutes.run-throughs"), part: "throughs"}
            ]

            Row {
                id: entry

                required property var modelData

                spacing: 6

                MinutesPart {
                    anchors.verticalCenter: parent.verticalCenter
                    width: 12
                    height: 12
                    part: entry.modelData.part
                }
                InkText {
                    text: entry.modelData.words
                    color: Theme.faint
                    font.pixelSize: Theme.small
                }
            }
        }
    }
}
