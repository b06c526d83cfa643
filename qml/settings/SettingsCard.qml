// SPDX-License-Identifier: GPL-3.0-or-later
// A card of settings under a title.
import QtQuick

Card {
    id: card

    property string title: ""
    property string note: ""
    default property alias content: column.data

    implicitHeight: column.height + heading.height + 2 * Theme.gap + 14

    InkText {
        id: heading
        x: 20
        y: Theme.gap
        width: parent.width - 40
        text: card.title
        font.pixelSize: 18
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    Column {
        id: column
        x: 20
        anchors.top: heading.bottom
        anchors.topMargin: 14
        width: parent.width - 40
        spacing: Theme.gap

        InkText {
            width: parent.width
            visible: text !== ""
            text: card.note
            color: Theme.faint
            wrapMode: Text.Wrap
        }
    }
}
