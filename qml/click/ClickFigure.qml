// SPDX-License-Identifier: GPL-3.0-or-later
// The tempo in a large figure that can be typed into.
import QtQuick
import Piolo

Item {
    id: figure

    required property ClickModel click

    /// The typing is done.
    signal done()

    InkText {
        id: sign
        anchors.right: input.left
        anchors.rightMargin: 8
        anchors.verticalCenter: parent.verticalCenter
        text: qsTrId("click.is").arg(figure.click.beatSign)
        color: Theme.faint
        font.pixelSize: Math.min(36, Math.max(18, figure.height * 0.22))
        Accessible.ignored: true
    }
    TempoInput {
        id: input
        objectName: "clickTempo"
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.horizontalCenterOffset: sign.width / 2
        width: Math.min(parent.width - sign.width - 24, height * 2.2)
        height: parent.height
        tempo: figure.click.tempo
        Accessible.name: qsTrId("click.tempo")
        Accessible.description: figure.click.tempoLine
        onTyped: tempo => figure.click.type(tempo)
        onDone: figure.done()
    }
}
