// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "settings"
    title: qsTr("Settings")
    purpose: [
        qsTr("Sound, looks, language and keys belong to this computer; how the drill goes travels with the practice folder."),
        qsTr("Any key can do any of the work: choose what it is to do, then press it; a pedal or a MIDI switch is a key like any other. One pedal alone can do everything: a press starts or marks a miss, two presses take back; held, it stops the click, and while stopped it opens the next passage.")
    ]
    why: [
        qsTr("Three days to be secure, four seconds to breathe after a miss, a quarter of a second from a slip to the key: these are our choices, and yours to change. That days apart help is known (Simmons 2012); how many are best is not."),
        qsTr("The level of the click starts low. Your instrument is louder, and that is well so: choose a sharper voice rather than more level.")
    ]
    sources: ["A. L. Simmons (2012), “Distributed practice and procedural memory consolidation in musicians' skill learning”, Journal of Research in Music Education 59(4), 357–368"]
}
