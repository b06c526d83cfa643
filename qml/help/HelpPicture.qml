// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "picture"
    title: qsTr("A picture of the music")
    purpose: [
        qsTr("Take in a photo, a scan or a PDF page of your part, and put the frame around the passage: what is in the frame is shown while you drill. The picture is copied into the practice folder.")
    ]
    keys: [
        [qsTr("Arrow keys"), qsTr("move the frame, or the edge that is chosen; with Shift in larger steps")],
        [qsTr("Space"), qsTr("the next edge, and the whole frame again")],
        [qsTr("PgUp, PgDown"), qsTr("scroll the page")],
        [qsTr("Esc"), qsTr("leave it as it was")]
    ]
    why: [
        qsTr("The eyes stay on the part: the bars of the passage alone, as large as there is room for. This is common practice, with no source. Copy only music that you may copy.")
    ]
}
