// SPDX-License-Identifier: GPL-3.0-or-later
// A part of a passage's page, below its title.
import QtQuick

Column {
    id: piece

    property string title: ""

    spacing: 6

    InkText {
        width: parent.width
        text: piece.title
        font.weight: Font.DemiBold
        wrapMode: Text.Wrap
        Accessible.role: Accessible.Heading
    }
}
