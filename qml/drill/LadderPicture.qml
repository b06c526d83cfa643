// SPDX-License-Identifier: GPL-3.0-or-later
// The ladder: its rungs from the floor to the target, the current one emphasised.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Item {
    id: picture

    required property LadderModel ladder
    property int streak: 0
    property int needed: 5
    property string streakWords: ""
    /// The streak is shown as circles on the current rung.
    property bool dots: true
    property bool notes: true
    /// Shown at the top while the target is out of view.
    property string targetWords: ""
    property real leastStep: 30
    property real figure: Theme.body

    readonly property real step: list.count < 1 ? leastStep : Math.max(leastStep, Math.min(leastStep * 2.2, height / list.count))
    readonly property real figureWidth: figure * 4
    /// Not all rungs fit: shows only whole ones, the current one in the middle, below the line for the
    /// target.
    readonly property bool longer: list.count * step > height + 1
    readonly property real pillHeight: target.implicitHeight + 4
    readonly property int wholeRungs: {
        const fit = Math.max(1, Math.floor((height - pillHeight - 6) / step));
        return fit % 2 === 0 ? fit - 1 : fit;
    }

    function centre() {
        list.positionViewAtIndex(list.currentIndex, ListView.Center);
    }
    onVisibleChanged: centre()

    // The list places its rows after the model has changed them.
    Timer {
        id: placed
        interval: 0
        onTriggered: picture.centre()
    }

    Accessible.role: Accessible.List
    Accessible.name: qsTrId("ladder.spoken")

    ListView {
        id: list
        objectName: "rungs"
        width: parent.width
        height: (picture.longer ? Math.min(count, picture.wholeRungs) : count) * picture.step
        y: picture.longer ? picture.pillHeight + 6 + (parent.height - picture.pillHeight - 6 - height) / 2 : (parent.height - height) / 2
        clip: true
        interactive: contentHeight > height
        verticalLayoutDirection: ListView.BottomToTop
        model: picture.ladder
        currentIndex: picture.ladder.presentRow
        highlightFollowsCurrentItem: false
        onCurrentIndexChanged: placed.restart()
        onHeightChanged: picture.centre()
        onContentHeightChanged: placed.restart()
        keyNavigationEnabled: false
        activeFocusOnTab: false

        delegate: Item {
            id: rung

            required property string tempo
            required property bool present
            required property bool target
            required property bool best
            required property bool start

            width: list.width
            height: picture.step

            Accessible.role: Accessible.ListItem
            Accessible.name: [tempo, present ? qsTrId("ladder.now").arg(picture.streakWords) : "",
                              target ? qsTrId("ladder.target") : "", best ? qsTrId("ladder.best") : "", start ? qsTrId("ladder.start") : ""]
                             .filter(words => words !== "").join(", ")

            InkText {
                id: figure
                width: picture.figureWidth
                height: parent.height
                horizontalAlignment: Text.AlignRight
                verticalAlignment: Text.AlignVCenter
                text: rung.tempo
                color: rung.present || rung.target ? Theme.ink : Theme.faint
                font.pixelSize: picture.figure * (rung.present ? 1.3 : 1)
                font.weight: rung.present || rung.target ? Font.Bold : Font.Normal
                Accessible.ignored: true
            }
            Rectangle {
                id: bar
                anchors.left: figure.right
                anchors.leftMargin: picture.figure * (rung.present ? 0.7 : 0.9)
                anchors.right: parent.right
                anchors.rightMargin: picture.notes ? picture.figure * (rung.present ? 4.4 : 4.6) : 0
                y: (parent.height - height) / 2
                height: rung.present ? Math.max(10, picture.figure * 0.7) : rung.target ? 4 : 3
                radius: height / 2
                color: rung.present ? Theme.accent : rung.target ? Theme.ink : Theme.rung
            }
            InkText {
                visible: picture.notes && text !== ""
                anchors.left: bar.right
                anchors.leftMargin: 8
                height: parent.height
                verticalAlignment: Text.AlignVCenter
                text: rung.target ? qsTrId("ladder.target") : rung.best ? qsTrId("ladder.best") : rung.start ? qsTrId("ladder.start") : ""
                color: rung.best && !rung.target ? Theme.clean : Theme.faint
                font.pixelSize: Math.max(12, picture.figure * 0.8)
                font.weight: rung.best || rung.target ? Font.DemiBold : Font.Normal
                Accessible.ignored: true
            }
            StreakDots {
                visible: picture.dots && rung.present
                anchors.horizontalCenter: bar.horizontalCenter
                anchors.bottom: bar.top
                anchors.bottomMargin: 2
                size: 2 * Math.round(Math.min(picture.step * 0.26, (bar.width - 10) / (Math.min(10, Math.max(5, picture.needed)) * 2.8)))
                streak: picture.streak
                needed: picture.needed
                words: picture.streakWords
                Accessible.ignored: true
            }
        }
    }

    Rectangle {
        visible: picture.longer && list.contentY - list.originY > picture.step / 2 && picture.targetWords !== ""
        anchors.right: parent.right
        width: target.implicitWidth + picture.figure
        height: picture.pillHeight
        radius: height / 2
        color: Theme.card
        border.color: Theme.ink
        border.width: 2

        InkText {
            id: target
            anchors.centerIn: parent
            text: picture.targetWords
            font.pixelSize: picture.figure
            font.weight: Font.DemiBold
        }
    }
}
