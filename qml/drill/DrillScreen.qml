// SPDX-License-Identifier: GPL-3.0-or-later
// The drill while the click is stopped: the passage's standing, and how to continue.
import QtQuick
import QtQuick.Layouts
import Piolo

Item {
    id: screen

    required property DrillModel drill
    required property KeyBindings keys
    required property MusicPicture picture
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

    readonly property bool roomy: height > 640
    readonly property real ladderWidth: Math.max(270, width * 0.24)
    /// The music is next to the ladder, above the controls, which then take less room.
    readonly property bool withMusic: withStaff || (picture.known && !music.missing)
    /// Notes that are known are drawn if there is no picture of them.
    readonly property bool withStaff: drill.staff.known && !picture.known
    readonly property real besides: width - ladderWidth - 3 * Theme.margin
    readonly property real musicRoom: height - (roomy ? 495 : 425) - (drill.listening.possible ? 64 : 0)
    readonly property real musicHeight: withStaff ? staff.wantedHeight : Math.min(besides / music.shape, musicRoom)

    /// The approximate height left for the controls below the title and the music.
    readonly property real deskHeight: height - 2 * Theme.margin - 60 - (withMusic ? musicHeight + Theme.gap : 0)
    /// If it is too low, the curve shows nothing useful; it is also in the log.
    readonly property bool withCurve: deskHeight > 560

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.margin
        anchors.topMargin: screen.roomy ? Theme.gap : Theme.gap / 2
        spacing: screen.roomy ? Theme.gap : Theme.gap / 2

        RowLayout {
            spacing: Theme.gap

            InkButton {
                objectName: "wayBack"
                text: screen.wayBack
                mark: "‹"
                Accessible.name: qsTrId("drill.way-back").arg(screen.wayBack)
                onClicked: screen.backWanted()
            }
            ColumnLayout {
                spacing: 2

                InkText {
                    Layout.fillWidth: true
                    text: screen.drill.text.title
                    font.pixelSize: Theme.heading
                    font.weight: Font.DemiBold
                    elide: Text.ElideRight
                    Accessible.role: Accessible.Heading
                }
                InkText {
                    Layout.fillWidth: true
                    text: screen.drill.text.about
                    color: Theme.faint
                    elide: Text.ElideRight
                }
            }
            InkButton {
                id: next
                objectName: "nextPassage"
                visible: screen.more
                text: qsTrId("drill.next")
                key: screen.keys.shown.next
                onClicked: screen.nextWanted()
            }
            InkButton {
                Layout.preferredHeight: next.visible ? next.implicitHeight : implicitHeight
                text: qsTrId("drill.edit")
                onClicked: screen.editWanted()
            }
        }

        RestNote {
            Layout.fillWidth: true
            visible: screen.drill.restDue
            onRead: screen.drill.dismissRest()
        }

        RowLayout {
            spacing: Theme.margin
            Layout.fillWidth: true
            Layout.fillHeight: true

            Card {
                Layout.preferredWidth: screen.ladderWidth
                Layout.fillHeight: true

                ColumnLayout {
                    anchors.fill: parent
                    anchors.margins: Theme.gap
                    spacing: 8

                    LadderPicture {
                        Layout.fillWidth: true
                        Layout.fillHeight: true
                        ladder: screen.drill.ladder
                        streak: screen.drill.streak
                        needed: screen.drill.cleanRuns
                        streakWords: screen.drill.text.streak
                        targetWords: qsTrId("drill.target").arg(screen.drill.text.target)
                        leastStep: 26
                    }
                    InkText {
                        Layout.fillWidth: true
                        horizontalAlignment: Text.AlignHCenter
                        text: screen.drill.text.streak
                        color: Theme.clean
                        font.weight: Font.DemiBold
                    }
                }
            }

            ColumnLayout {
                spacing: screen.roomy ? Theme.gap : Theme.gap / 2

                // The music is what players look for before the first note; the curve is also in the log.
                PagePart {
                    id: music
                    objectName: "musicReady"
                    Layout.fillWidth: true
                    Layout.preferredHeight: missing ? 2 * Theme.body : screen.musicHeight
                    visible: screen.picture.known
                    picture: screen.picture
                }
                Staff {
                    id: staff
                    objectName: "staffReady"
                    Layout.fillWidth: true
                    Layout.preferredHeight: screen.musicHeight
                    visible: screen.withStaff
                    view: screen.drill.staff
                    dark: Theme.dark
                    span: screen.besides
                    room: screen.musicRoom
                    mostSpace: screen.height / 60
                    leastSpace: screen.height / 100
                    bar: screen.drill.listening.active ? screen.drill.beats.barNumber : -1
                    lit: screen.drill.listening.active ? screen.drill.staff.noteAt(screen.drill.beats.barNumber, screen.drill.beats.beat, screen.drill.beats.part, screen.drill.beats.parts) : -1
                    Accessible.role: Accessible.Graphic
                    Accessible.name: screen.drill.staff.words
                }
                RowLayout {
                    spacing: Theme.margin
                    Layout.fillWidth: true
                    Layout.fillHeight: true

                    StoppedDrill {
                        Layout.fillWidth: true
                        Layout.fillHeight: true
                        drill: screen.drill
                        keys: screen.keys
                        roomy: screen.deskHeight > (screen.drill.listening.possible ? 600 : 500)
                        compact: screen.withMusic && screen.deskHeight < (screen.drill.listening.possible ? 445 : 380)
                        onLogWanted: screen.logWanted()
                        explained: screen.deskHeight > (screen.drill.listening.possible ? 540 : 470)
                    }

                    ColumnLayout {
                        Layout.preferredWidth: Math.max(260, screen.width * 0.25)
                        Layout.maximumWidth: Math.max(260, screen.width * 0.25)
                        spacing: Theme.gap

                        Card {
                            Layout.fillWidth: true
                            Layout.fillHeight: true
                            visible: screen.withCurve

                            InkText {
                                id: curveTitle
                                x: Theme.gap
                                y: Theme.gap
                                text: qsTrId("drill.curve")
                                font.weight: Font.DemiBold
                                Accessible.role: Accessible.Heading
                            }
                            TempoCurve {
                                anchors.fill: parent
                                anchors.margins: Theme.gap
                                anchors.topMargin: curveTitle.y + curveTitle.height + 8
                                drill: screen.drill
                                dark: Theme.dark
                                family: Theme.family
                                pixelSize: 12
                                Accessible.role: Accessible.Graphic
                                Accessible.name: qsTrId("drill.curve.spoken").arg(screen.drill.text.target)
                            }
                        }
                        StageCard {
                            Layout.fillWidth: true
                            drill: screen.drill
                            recorded: screen.recorded
                        }
                        TodayCard {
                            Layout.fillWidth: true
                            visible: screen.deskHeight > 380
                            today: screen.drill.today
                            unsaved: screen.unsaved
                            recorded: screen.recorded
                        }
                        Item {
                            Layout.fillHeight: true
                            visible: !screen.withCurve
                        }
                    }
                }
            }
        }
    }
}
