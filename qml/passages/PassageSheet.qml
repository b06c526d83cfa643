// SPDX-License-Identifier: GPL-3.0-or-later
// What the chosen passage is, and the way to drill it: the music first, then how it has gone.
// Qt 6.4's linter does not see ids outside a component.
// qmllint disable unqualified
import QtQuick
import Piolo

Card {
    id: sheet

    required property PassagePage page
    required property MusicPicture picture
    required property KeyBindings keys
    property bool readOnly: false

    readonly property bool withPicture: picture.known && !music.missing
    readonly property bool withStaff: page.staff.known && !picture.known
    readonly property var breaks: page.breaks
    readonly property var bars: breaks.bars ?? []

    signal drillRequested(string passage)
    signal throughRequested(string piece)
    signal editRequested()
    signal restoreRequested(string passage)

    function take() {
        drill.forceActiveFocus(Qt.TabFocusReason);
    }

    function takeRestore() {
        restore.forceActiveFocus(Qt.TabFocusReason);
    }

    objectName: "passageSheet"

    InkText {
        id: title
        x: 24
        y: Theme.gap
        width: edit.x - x - Theme.gap
        text: sheet.page.title
        font.pixelSize: 22
        font.weight: Font.DemiBold
        elide: Text.ElideRight
        Accessible.role: Accessible.Heading
    }
    InkText {
        id: about
        anchors.left: title.left
        anchors.right: title.right
        anchors.top: title.bottom
        anchors.topMargin: 2
        text: sheet.page.about
        color: Theme.faint
        font.pixelSize: Theme.small
        wrapMode: Text.Wrap
        maximumLineCount: 2
        elide: Text.ElideRight
    }
    InkButton {
        id: edit
        objectName: "edit"
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        y: 12
        text: qsTrId("page.edit")
        onClicked: sheet.editRequested()
    }
    ScrollColumn {
        anchors.top: about.bottom
        anchors.topMargin: 12
        anchors.bottom: buttons.top
        anchors.bottomMargin: 12
        x: 24
        width: parent.width - 32
        spacing: 20

        Item {
            width: parent.width
            height: Math.max(figure.height, words.height)

            InkText {
                id: figure
                text: sheet.page.tempo
                font.pixelSize: 56
                font.weight: Font.Bold
                Accessible.name: sheet.page.tempoLine
            }
            Column {
                id: words
                anchors.left: figure.right
                anchors.leftMargin: Theme.gap
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                spacing: 4

                InkText {
                    width: parent.width
                    text: qsTrId("page.standing").arg(sheet.page.target).arg(sheet.page.standing)
                    color: sheet.page.secure ? Theme.clean : Theme.faint
                    wrapMode: Text.Wrap
                }
                InkText {
                    objectName: "nextStep"
                    width: parent.width
                    visible: text !== ""
                    text: sheet.page.next
                    font.weight: Font.DemiBold
                    wrapMode: Text.Wrap
                }
                StreakDots {
                    visible: sheet.page.streak > 0
                    streak: sheet.page.streak
                    needed: sheet.page.cleanRuns
                    size: Math.min(14, words.width / sheet.page.cleanRuns / 1.4)
                    words: sheet.page.streakText
                }
            }
        }
        PagePart {
            id: music
            objectName: "musicOfPage"
            width: parent.width
            height: missing ? 2 * Theme.body : Math.min(width / shape, 320)
            visible: sheet.picture.known
            picture: sheet.picture
        }
        Staff {
            id: staff
            objectName: "staffOfPage"
            width: parent.width
            height: visible ? wantedHeight : 0
            visible: sheet.withStaff
            view: sheet.page.staff
            dark: Theme.dark
            span: width
            room: 320
            mostSpace: 12
            leastSpace: 6
            Accessible.role: Accessible.Graphic
            Accessible.name: sheet.page.staff.words
        }
        PagePiece {
            width: parent.width
            visible: sheet.page.played
            title: qsTrId("page.curve")

            TempoCurve {
                width: parent.width
                height: 200
                source: sheet.page
                dark: Theme.dark
                family: Theme.family
                pixelSize: 12
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTrId("drill.curve.spoken").arg(sheet.page.target)
            }
        }
        PagePiece {
            width: parent.width
            visible: sheet.page.played
            title: qsTrId("page.stage").arg(sheet.page.stages.names[sheet.page.stages.stage])

            InkText {
                width: parent.width
                text: sheet.page.stages.evidence
                color: Theme.faint
                wrapMode: Text.Wrap
            }
        }
        PagePiece {
            width: parent.width
            visible: sheet.bars.length > 0
            title: qsTrId("breaks.title")

            Row {
                id: columns
                width: parent.width
                height: 96
                Accessible.role: Accessible.List
                Accessible.name: qsTrId("breaks.title")

                Repeater {
                    model: sheet.bars

                    BreakBar {
                        required property var modelData

                        width: columns.width / Math.max(1, sheet.bars.length)
                        height: columns.height
                        values: modelData
                    }
                }
            }
            InkText {
                width: parent.width
                text: sheet.breaks.note ?? ""
                color: Theme.faint
                font.pixelSize: Theme.small
                wrapMode: Text.Wrap
            }
        }
        PagePiece {
            width: parent.width
            visible: sheet.page.notes !== ""
            title: qsTrId("page.notes")

            InkText {
                width: parent.width
                text: sheet.page.notes
                wrapMode: Text.Wrap
            }
        }
    }
    Flow {
        id: buttons
        x: 24
        width: parent.width - 48
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        spacing: 12

        InkText {
            width: parent.width
            visible: sheet.page.removed
            text: qsTrId("passages.removed.notice").arg(sheet.page.title)
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
        }
        InkButton {
            id: restore
            objectName: "restore"
            visible: sheet.page.removed && !sheet.readOnly
            strong: true
            text: qsTrId("passages.restore")
            onClicked: sheet.restoreRequested(sheet.page.passage)
        }
        InkButton {
            id: drill
            objectName: "drillIt"
            width: Math.min(parent.width, Math.max(implicitWidth, 280))
            implicitHeight: 60
            visible: !sheet.page.removed
            strong: true
            size: 20
            text: qsTrId("form.drill")
            mark: "▶"
            key: sheet.keys.shown.save
            onClicked: sheet.drillRequested(sheet.page.passage)
        }
        InkButton {
            objectName: "through"
            implicitHeight: 60
            visible: sheet.page.piece !== "" && !sheet.page.removed
            text: qsTrId("form.play-through")
            onClicked: sheet.throughRequested(sheet.page.piece)
        }
    }
}
