// SPDX-License-Identifier: GPL-3.0-or-later
// Keys and what they do, as they are bound now; nothing if there are none.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick

Column {
    id: table

    property var rows: []

    visible: rows.length > 0
    spacing: 8

    InkText {
        width: table.width
        text: qsTrId("help.keys.title")
        font.pixelSize: 18
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    Repeater {
        model: table.rows

        Item {
            id: row

            required property var modelData
            readonly property string spoken: qsTrId("help.keys.line").arg(modelData[0]).arg(modelData[1])

            width: table.width
            height: Math.max(name.height, does.height)
            Accessible.role: Accessible.StaticText
            Accessible.name: spoken

            InkText {
                id: name
                width: parent.width * 0.3
                text: row.modelData[0]
                font.weight: Font.DemiBold
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
            InkText {
                id: does
                x: name.width + Theme.gap
                width: parent.width - x
                text: row.modelData[1]
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
        }
    }
}
