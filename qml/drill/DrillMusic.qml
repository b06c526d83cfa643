// SPDX-License-Identifier: GPL-3.0-or-later
// What players look for before the first note: a picture of the music, or its notes; without either, the tempo curve.
import QtQuick
import Piolo

Item {
    id: music

    required property DrillModel drill
    required property MusicPicture picture
    /// The height there is.
    property real room: 0

    readonly property bool withStaff: drill.staff.known && !picture.known
    readonly property bool withPicture: picture.known
    readonly property bool withCurve: !withStaff && !withPicture && room >= 150

    implicitHeight: withStaff ? staff.wantedHeight
                    : withPicture ? part.missing ? 2 * Theme.body : Math.min(width / part.shape, room)
                    : withCurve ? Math.min(room, 280) : 0

    PagePart {
        id: part
        objectName: "musicReady"
        anchors.fill: parent
        visible: music.withPicture
        picture: music.picture
    }
    Staff {
        id: staff
        objectName: "staffReady"
        anchors.fill: parent
        visible: music.withStaff
        view: music.drill.staff
        dark: Theme.dark
        span: music.width
        room: music.room
        mostSpace: 14
        leastSpace: 6
        bar: music.drill.listening.active ? music.drill.beats.barNumber : -1
        lit: music.drill.listening.active ? music.drill.staff.noteAt(music.drill.beats.barNumber, music.drill.beats.beat, music.drill.beats.part, music.drill.beats.parts) : -1
        Accessible.role: Accessible.Graphic
        Accessible.name: music.drill.staff.words
    }
    Card {
        objectName: "curveReady"
        anchors.fill: parent
        visible: music.withCurve

        InkText {
            id: curveTitle
            x: Theme.gap
            y: 12
            text: qsTrId("page.curve")
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        TempoCurve {
            anchors.fill: parent
            anchors.margins: Theme.gap
            anchors.topMargin: curveTitle.y + curveTitle.height + 6
            source: music.drill
            dark: Theme.dark
            family: Theme.family
            pixelSize: 12
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTrId("drill.curve.spoken").arg(music.drill.text.target)
        }
    }
}
