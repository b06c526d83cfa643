// SPDX-License-Identifier: GPL-3.0-or-later
// Text in the program's own font.
import QtQuick

Text {
    color: Theme.ink
    font.family: Theme.family
    font.pixelSize: Theme.body
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: text
    Accessible.ignored: text === ""
}
