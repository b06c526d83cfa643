// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of a passage's music, shown instead of the form: added, cropped, removed.
import QtQuick
import Piolo

Card {
    id: card

    required property MusicPicture picture
    required property string title

    signal done()

    /// The existing picture is to be replaced.
    property bool changing: false
    readonly property bool cropping: picture.known && !changing

    function begin() {
        changing = false;
        if (cropping)
            crop.forceActiveFocus(Qt.TabFocusReason);
        else
            file.take();
    }
    function keep() {
        picture.keepFrame();
        done();
    }
    function leave() {
        picture.frame.revert();
        picture.taking.close();
        done();
    }

    Accessible.role: Accessible.Dialog
    Accessible.name: heading.text
    Keys.onEscapePressed: leave()

    Connections {
        target: card.picture
        function onChanged() {
            card.changing = false;
            if (card.visible && card.cropping)
                crop.forceActiveFocus(Qt.TabFocusReason);
        }
    }
    DropArea {
        anchors.fill: parent
        keys: ["text/uri-list"]
        onDropped: drop => card.picture.taking.read(drop.urls[0])
    }
    InkText {
        id: heading
        anchors.left: parent.left
        anchors.right: remove.visible ? remove.left : parent.right
        anchors.top: parent.top
        anchors.margins: Theme.gap
        anchors.leftMargin: 24
        text: qsTrId("picture.title").arg(card.title)
        font.pixelSize: 22
        font.weight: Font.DemiBold
        elide: Text.ElideRight
        Accessible.role: Accessible.Heading
    }
    InkButton {
        id: remove
        objectName: "pictureRemove"
        anchors.right: parent.right
        anchors.rightMargin: 24
        anchors.verticalCenter: heading.verticalCenter
        visible: card.cropping
        text: qsTrId("picture.remove")
        ink: Theme.miss
        onClicked: {
            card.picture.remove();
            file.take();
        }
    }
    ScrollColumn {
        anchors.top: heading.bottom
        anchors.topMargin: 12
        anchors.left: parent.left
        anchors.leftMargin: 24
        anchors.right: parent.right
        anchors.rightMargin: 8
        anchors.bottom: buttons.top
        anchors.bottomMargin: 12
        visible: !card.cropping

        PictureFile {
            id: file
            width: parent.width
            picture: card.picture
        }
    }
    Column {
        id: choices
        anchors.top: heading.bottom
        anchors.topMargin: 14
        anchors.left: parent.left
        anchors.leftMargin: 24
        anchors.right: parent.right
        anchors.rightMargin: 24
        visible: card.cropping && !crop.missing
        spacing: 8

        InkText {
            width: parent.width
            text: qsTrId("picture.hint")
            color: Theme.faint
            font.pixelSize: Theme.small
            wrapMode: Text.WordWrap
        }
        Pills {
            width: parent.width
            label: qsTrId("picture.edge")
            options: [
                {value: PictureFrame.All, text: qsTrId("picture.frame")},
                {value: PictureFrame.Top, text: qsTrId("picture.top")},
                {value: PictureFrame.Right, text: qsTrId("picture.right")},
                {value: PictureFrame.Bottom, text: qsTrId("picture.bottom")},
                {value: PictureFrame.Left, text: qsTrId("picture.left")}
            ]
            value: crop.edges
            onChosen: value => crop.edges = value
        }
    }
    PictureCrop {
        id: crop
        anchors.top: choices.bottom
        anchors.topMargin: 16
        anchors.left: parent.left
        anchors.leftMargin: 24
        anchors.right: parent.right
        anchors.rightMargin: 24
        anchors.bottom: buttons.top
        anchors.bottomMargin: 20
        visible: card.cropping
        picture: card.picture
    }
    Flow {
        id: buttons
        anchors.left: parent.left
        anchors.leftMargin: 24
        anchors.right: parent.right
        anchors.rightMargin: 24
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        spacing: 12

        InkButton {
            objectName: "pictureKeep"
            visible: card.cropping
            text: card.picture.frame.moved ? qsTrId("picture.keep") : qsTrId("picture.done")
            strong: true
            onClicked: card.keep()
        }
        InkButton {
            objectName: "pictureWhole"
            visible: card.cropping && !crop.missing
            text: qsTrId("picture.whole-page")
            onClicked: card.picture.frame.widen()
        }
        InkButton {
            objectName: "pictureOther"
            visible: card.cropping
            text: qsTrId("picture.another")
            onClicked: {
                card.changing = true;
                file.take();
            }
        }
        InkButton {
            objectName: "pictureRestore"
            visible: card.picture.removedNow
            text: qsTrId("picture.restore")
            onClicked: card.picture.restore()
        }
        InkButton {
            objectName: "pictureLeave"
            visible: !card.cropping || card.picture.frame.moved
            text: card.cropping ? qsTrId("picture.leave") : qsTrId("picture.back-to-form")
            onClicked: card.leave()
        }
    }
}
