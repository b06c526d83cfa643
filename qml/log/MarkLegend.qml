// SPDX-License-Identifier: GPL-3.0-or-later
// What the player marks while the click runs, and with which keys.
import QtQuick
import Piolo

// A single text that wraps between its parts: its height follows its width at once, as layouts need.
InkText {
    id: legend

    required property KeyBindings keys
    property bool openEnded: false

    readonly property var parts: [
        {mark: "▼", words: qsTrId("log.mark.missed").arg(keys.shown.mark), ink: Theme.miss},
        {mark: "●", words: openEnded ? qsTrId("log.mark.clean").arg(keys.shown.clean)
                                     : qsTrId("log.mark.clean-unmarked"), ink: Theme.clean},
        {mark: "■", words: qsTrId("log.mark.stop").arg(keys.shown.stop), ink: Theme.faint}
    ]

    function unbroken(words) {
        return words.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/ /g, "&nbsp;");
    }

    text: parts.map(part => `<font color="${part.ink}">${part.mark}</font>&nbsp;${unbroken(part.words)}`).join("&nbsp;&nbsp; ")
    textFormat: Text.StyledText
    color: Theme.faint
    wrapMode: Text.Wrap
    lineHeight: 1.2
    Accessible.name: parts.map(part => part.words).join(", ")
}
