// SPDX-License-Identifier: GPL-3.0-or-later
// The drill while the click runs: readable from the music stand, with nothing else to look at.
import QtQuick
import Piolo

Item {
    id: screen

    required property DrillModel drill
    required property KeyBindings keys
    required property MusicPicture picture
    required property SetModel set

    /// The smallest size of anything shown.
    readonly property real least: Math.min(height / 25, width / 18)
    readonly property real margin: Math.min(height, width) / 16
    /// A portrait window has no room for the ladder.
    readonly property bool tall: width < height
    /// The corners at the right are buttons; everywhere else a press marks.
    readonly property real corner: Math.max(64, height / 10)

    /// The music takes most of the room; the figures are above it.
    readonly property bool withMusic: withStaff || (picture.known && !music.missing)
    /// Notes that are known are drawn if there is no picture of them.
    readonly property bool withStaff: drill.staff.known && !picture.known
    readonly property real musicHeight: withStaff ? staff.wantedHeight : column.width / music.shape
    readonly property real beatsHeight: column.height * 0.11
    readonly property int barRows: bar.rows
    /// A wide strip of music leaves more room for the figures.
    readonly property real head: Math.max(column.height * 0.2, Math.min(column.height * 0.4,
        column.height - beatsHeight * bar.rows - margin - musicHeight))

    Accessible.role: Accessible.Pane
    Accessible.name: qsTrId("playing.spoken").arg(keys.shown.mark).arg(keys.shown.stop)

    LadderPicture {
        id: ladder
        x: screen.margin
        y: screen.margin
        width: screen.withMusic ? Math.min(screen.width * 0.16, screen.height * 0.32) : Math.min(screen.width * 0.25, screen.height * 0.5)
        height: screen.height - 2 * screen.margin
        ladder: screen.drill.ladder
        streakWords: screen.drill.text.streak
        dots: false
        targetWords: qsTrId("playing.target").arg(screen.drill.text.target)
        notes: false
        figure: screen.least * 1.1
        leastStep: screen.height / 9
        visible: !screen.tall
    }
    InkText {
        x: screen.margin
        height: screen.corner
        verticalAlignment: Text.AlignVCenter
        visible: screen.tall
        text: qsTrId("playing.target").arg(screen.drill.text.target)
        font.pixelSize: screen.least * 1.1
        color: Theme.faint
    }

    Item {
        id: column
        x: screen.tall ? screen.margin : ladder.x + ladder.width + screen.margin
        width: screen.width - x - (screen.tall ? screen.margin : screen.corner + screen.margin / 4)
        y: screen.tall ? screen.corner + screen.margin / 4 : screen.margin
        height: screen.height - y - (screen.tall ? screen.corner + screen.margin / 4 : screen.margin)

        InkText {
            id: tempo
            width: screen.withMusic ? parent.width * 0.3 : parent.width
            height: screen.withMusic ? screen.head : parent.height * 0.46
            text: screen.drill.text.tempo
            font.pixelSize: Math.max(1, height * (screen.withMusic ? 0.98 : screen.tall ? 1 : 1.08))
            font.weight: Font.Bold
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Math.max(1, screen.least)
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            Accessible.name: screen.drill.text.tempoLine
        }
        StreakDots {
            id: dots
            x: screen.withMusic ? parent.width * 0.32 : (parent.width - width) / 2
            y: screen.withMusic ? screen.head * 0.25 - height / 2 : parent.height * 0.48
            visible: !screen.drill.apart
            size: screen.withMusic ? Math.min(screen.least * 1.4, parent.width * 0.3 / (Math.min(10, needed) * 1.4)) : Math.min(parent.height * 0.075, parent.width / (Math.min(10, needed) * 1.4))
            streak: screen.drill.streak
            needed: screen.drill.cleanRuns
            words: screen.drill.text.streak
        }
        InkText {
            anchors.centerIn: dots
            visible: screen.drill.apart
            text: screen.drill.text.apart
            font.pixelSize: screen.least * 1.2
            color: Theme.faint
        }
        BeatRow {
            id: bar
            width: parent.width
            y: screen.withMusic ? screen.head : parent.height * 0.61
            beats: screen.drill.beats
            cellHeight: screen.withMusic ? screen.beatsHeight : rows > 1 ? parent.height * 0.09 : parent.height * 0.16
        }
        InkText {
            x: screen.withMusic ? parent.width * 0.66 : 0
            y: screen.withMusic ? 0 : parent.height - height
            height: screen.withMusic ? screen.head * 0.5 : parent.height * 0.16
            width: screen.withMusic ? parent.width - x : parent.width * 0.5
            verticalAlignment: Text.AlignVCenter
            horizontalAlignment: screen.withMusic ? Text.AlignRight : Text.AlignLeft
            text: screen.drill.beats.placeText
            font.pixelSize: Math.max(screen.least, screen.height * 0.075)
            font.weight: Font.Bold
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Math.max(1, screen.least)
        }
        FeedbackMark {
            anchors.right: parent.right
            y: screen.withMusic ? screen.head * 0.5 : parent.height - height
            height: screen.withMusic ? screen.head * 0.5 : parent.height * 0.16
            width: parent.width * (screen.withMusic ? 0.68 : 0.5)
            drill: screen.drill
            size: Math.max(screen.least, screen.height * (screen.withMusic ? 0.04 : 0.06))
        }
        PagePart {
            id: music
            objectName: "musicPlaying"
            width: parent.width
            y: bar.y + bar.height + screen.margin / 2
            height: parent.height - y
            visible: screen.withMusic && !screen.withStaff
            picture: screen.picture
        }
        Staff {
            id: staff
            objectName: "staffPlaying"
            anchors.fill: music
            visible: screen.withStaff
            view: screen.drill.staff
            dark: Theme.dark
            span: column.width
            room: column.height * 0.8 - screen.beatsHeight * screen.barRows - screen.margin / 2
            mostSpace: screen.height / 40
            leastSpace: screen.height / 100
            bar: screen.drill.beats.barNumber
            Accessible.role: Accessible.Graphic
            Accessible.name: screen.drill.staff.words
        }
    }

    InkText {
        objectName: "turn"
        x: screen.margin
        width: parent.width - x - screen.corner - screen.margin / 4
        height: screen.tall ? screen.corner : screen.margin
        visible: !call.visible
        verticalAlignment: Text.AlignVCenter
        horizontalAlignment: Text.AlignHCenter
        text: screen.set.turnText
        font.pixelSize: screen.least * 0.9
        color: Theme.faint
        wrapMode: Text.Wrap
        maximumLineCount: screen.tall ? 2 : 1
        elide: Text.ElideRight
    }
    TurnCall {
        id: call
        anchors.fill: column
        set: screen.set
        least: screen.least
    }

    MarkArea {
        anchors.fill: parent
        onMarked: stamp => screen.drill.missAt(stamp)
    }
    CornerButton {
        objectName: "stop"
        anchors.right: parent.right
        size: screen.corner
        mark: "■"
        text: qsTrId("playing.stop")
        onClicked: screen.drill.stop()
    }
    CornerButton {
        objectName: "playingBack"
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        size: screen.corner
        mark: "↶"
        text: qsTrId("drill.take-back")
        onClicked: screen.drill.takeBack()
    }
}
