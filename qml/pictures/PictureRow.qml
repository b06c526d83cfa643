// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of the music in the form of a passage: what there is, and the button to its own card.
import QtQuick
import Piolo

Row {
    id: row

    required property MusicPicture picture

    signal wanted()

    spacing: Theme.gap

    InkButton {
        id: open
        objectName: "pictureOpen"
        enabled: row.picture.open
        text: row.picture.known ? qsTrId("picture.crop") : qsTrId("picture.add")
        onClicked: row.wanted()
    }
    PagePart {
        width: row.width - open.width - row.spacing
        height: open.height
        visible: row.picture.known
        picture: row.picture
        size: Theme.small
    }
    InkText {
        width: row.width - open.width - row.spacing
        height: open.height
        visible: !row.picture.open
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
        text: row.picture.readOnly ? qsTrId("picture.read-only") : qsTrId("picture.after-saving")
        color: Theme.faint
        font.pixelSize: Theme.small
    }
}
