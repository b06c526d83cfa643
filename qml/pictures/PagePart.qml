// SPDX-License-Identifier: GPL-3.0-or-later
// The part of a page that shows a passage, as large as its space allows. Paper stays white in both themes.
import QtQuick
import Piolo

Item {
    id: part

    required property MusicPicture picture
    /// The text size of the line shown instead if the picture is missing.
    property real size: Theme.body

    readonly property bool missing: page.status === Image.Error
    readonly property real shape: page.implicitHeight > 0
        ? page.implicitWidth * picture.width / (page.implicitHeight * picture.height) : 1
    readonly property real paperHeight: Math.min(height, width / shape)

    /// The page is read in steps of size, the same everywhere in the window, so that it is decoded once and
    /// not again when the click starts. Every graphics card supports 4096.
    readonly property real wanted: Math.max(640, Window.width) * Screen.devicePixelRatio * 1.5 / picture.width
    readonly property int detail: Math.min(4096, Math.round(Math.pow(2, Math.ceil(Math.log2(wanted) * 2) / 2)))

    Rectangle {
        id: paper
        x: Math.round((part.width - width) / 2)
        y: Math.round((part.height - height) / 2)
        width: Math.round(part.paperHeight * part.shape)
        height: Math.round(part.paperHeight)
        visible: page.status === Image.Ready
        color: "white"
        clip: true
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTrId("picture.spoken")

        Image {
            id: page
            objectName: "page"
            x: -part.picture.left * width
            y: -part.picture.top * height
            width: paper.width / part.picture.width
            height: paper.height / part.picture.height
            source: part.picture.url
            sourceSize.width: part.detail
            sourceSize.height: part.detail
            asynchronous: true
            autoTransform: true
            mipmap: true
            Accessible.ignored: true
        }
        Rectangle {
            anchors.fill: parent
            color: "transparent"
            border.color: Theme.edge
        }
    }
    InkText {
        objectName: "pictureMissing"
        anchors.fill: parent
        visible: part.missing
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
        elide: Text.ElideRight
        text: qsTrId("picture.unreadable")
        color: Theme.faint
        font.pixelSize: part.size
    }
}
