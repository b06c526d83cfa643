// SPDX-License-Identifier: GPL-3.0-or-later
// The drill while the click is stopped: the ladder, the music, the tempo and Start. All else is in one closed panel.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Item {
    id: screen

    required property DrillModel drill
    required property KeyBindings keys
    required property MusicPicture picture
    required property SoundSettings sound
    property int unsaved: 0
    property bool recorded: true
    /// True if there is another passage.
    property bool more: false
    /// Where the way back leads, in words.
    property string wayBack: ""

    signal backWanted()
    signal editWanted()
    signal nextWanted()
    signal logWanted()
    signal clickWanted()

    /// One column: the music takes the whole width.
    readonly property bool tall: width < 760
    readonly property bool low: height < 640
    readonly property real gap: low ? 10 : Theme.gap
    readonly property real ladderWidth: tall ? Math.max(120, width * 0.28) : Math.min(360, Math.max(220, width * 0.22))
    /// The music takes what the controls leave.
    readonly property real musicRoom: place.height - controls.implicitHeight - gap

    /// The open panel is beside the music and the controls, or in their place.
    property bool howToPlayOpen: false
    readonly property bool beside: howToPlayOpen && width >= 1200
    readonly property bool instead: howToPlayOpen && !beside
    readonly property real panelWidth: beside ? 430 + Theme.gap : 0

    function showHowToPlay(reason) {
        howToPlayOpen = true;
        (howToPlay.item as HowToPlay)?.take(reason);
    }
    function hideHowToPlay() {
        howToPlayOpen = false;
        controls.forceActiveFocus();
    }

    onVisibleChanged: howToPlayOpen = false

    DrillHeader {
        id: header
        x: Theme.margin
        y: screen.low ? 8 : Theme.gap
        width: parent.width - 2 * Theme.margin
        drill: screen.drill
        keys: screen.keys
        wayBack: screen.wayBack
        more: screen.more
        narrow: screen.tall
        onBackWanted: screen.backWanted()
        onNextWanted: screen.nextWanted()
    }
    RestNote {
        id: rest
        x: Theme.margin
        anchors.top: header.bottom
        anchors.topMargin: visible ? screen.gap : 0
        width: parent.width - 2 * Theme.margin
        height: visible ? implicitHeight : 0
        visible: screen.drill.restDue
        onRead: screen.drill.dismissRest()
    }
    Item {
        id: place
        x: Theme.margin
        anchors.top: rest.bottom
        anchors.topMargin: screen.gap
        anchors.bottom: parent.bottom
        anchors.bottomMargin: screen.low ? 8 : Theme.gap
        width: parent.width - 2 * Theme.margin

        DrillMusic {
            id: music
            x: screen.tall ? 0 : ladder.width + Theme.gap
            width: parent.width - x - screen.panelWidth
            height: implicitHeight
            visible: !screen.instead
            drill: screen.drill
            picture: screen.picture
            room: screen.musicRoom
        }
        Card {
            id: ladder
            y: screen.tall && music.height > 0 ? music.height + screen.gap : 0
            width: screen.ladderWidth
            height: parent.height - y
            visible: !(screen.instead && screen.tall)

            LadderPicture {
                x: 10
                y: 12
                width: parent.width - 2 * x
                height: parent.height - y - streak.height - 20
                ladder: screen.drill.ladder
                streak: screen.drill.streak
                needed: screen.drill.cleanRuns
                streakWords: screen.drill.text.streak
                targetWords: qsTrId("drill.target").arg(screen.drill.text.target)
                notes: !screen.tall
                leastStep: 26
            }
            InkText {
                id: streak
                x: 8
                width: parent.width - 16
                anchors.bottom: parent.bottom
                anchors.bottomMargin: 10
                horizontalAlignment: Text.AlignHCenter
                text: screen.drill.text.streak
                color: Theme.clean
                font.weight: Font.DemiBold
                font.pixelSize: screen.tall ? Theme.small : Theme.body
                wrapMode: Text.WordWrap
            }
        }
        StoppedDrill {
            id: controls
            readonly property real start: ladder.width + Theme.gap
            readonly property real room: parent.width - start - screen.panelWidth
            readonly property real above: music.height > 0 ? music.height + screen.gap : 0

            x: start + (room - width) / 2
            y: above + Math.max(0, (parent.height - above - implicitHeight) / 2)
            width: Math.min(room, Math.max(760, screen.height * 0.6))
            visible: !screen.instead
            drill: screen.drill
            keys: screen.keys
            sound: screen.sound
            unsaved: screen.unsaved
            compact: screen.low && !screen.tall
            figure: Math.max(110, Math.min(320, screen.height * 0.15))
            howToPlayOpen: screen.howToPlayOpen
            onLogWanted: screen.logWanted()
            onHowToPlayWanted: reason => screen.showHowToPlay(reason)
        }
    }
    Kept {
        id: howToPlay
        anchors.right: place.right
        anchors.top: place.top
        anchors.bottom: place.bottom
        width: screen.tall ? place.width : screen.beside ? 430 : Math.min(560, place.width - ladder.width - Theme.gap)
        shown: screen.howToPlayOpen
        sourceComponent: HowToPlay {
            drill: screen.drill
            keys: screen.keys
            recorded: screen.recorded
            onClosed: screen.hideHowToPlay()
            onEditWanted: screen.editWanted()
            onClickWanted: screen.clickWanted()
        }
    }
}
