// SPDX-License-Identifier: GPL-3.0-or-later
// Announces whose turn it is, large enough for a glance from the music stand.
import QtQuick
import Piolo

Rectangle {
    id: call

    required property SetModel set
    /// The smallest size of anything shown.
    property real least: 20

    visible: set.announcedTitle !== ""
    color: Theme.paper
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTrId("set.turn-spoken").arg(set.announcedPlace).arg(set.announcedTitle)
    Accessible.ignored: !visible

    InkText {
        id: placeText
        y: parent.height * 0.16
        width: parent.width
        text: call.set.announcedPlace
        font.pixelSize: call.least * 1.6
        color: Theme.accent
        font.weight: Font.DemiBold
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }
    InkText {
        objectName: "announced"
        y: placeText.y + placeText.height + call.least / 2
        width: parent.width
        height: parent.height - y
        text: call.set.announcedTitle
        font.pixelSize: Math.max(1, Math.min(call.least * 3.4, width / 6))
        font.weight: Font.Bold
        fontSizeMode: Text.Fit
        minimumPixelSize: Math.max(1, call.least)
        wrapMode: Text.Wrap
        elide: Text.ElideRight
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }
}
