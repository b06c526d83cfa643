// SPDX-License-Identifier: GPL-3.0-or-later
// A chapter for each screen: what it is for, its keys, and why it works the way it does, with sources.
import QtQuick
import Piolo

FocusScope {
    id: screen

    property KeyBindings keys: PracticeRoom.keys

    signal backWanted

    readonly property list<HelpChapter> chapters: [
        HelpStart {},
        HelpPassages {
            bound: screen.keys
        },
        HelpMusic {},
        HelpPicture {},
        HelpDrill {
            bound: screen.keys
        },
        HelpRunThrough {
            bound: screen.keys
        },
        HelpScales {},
        HelpLog {
            bound: screen.keys
        },
        HelpPaper {},
        HelpFiles {},
        HelpSettings {},
        HelpCare {}
    ]
    readonly property int place: placeOf(HelpTarget.chapter)

    function placeOf(name) {
        for (let i = 0; i < chapters.length; ++i)
            if (chapters[i].name === name)
                return i;
        return 0;
    }

    onBackWanted: {
        if (HelpTarget.cameFrom !== "")
            PracticeRoom.screen = HelpTarget.cameFrom;
    }
    Keys.onEscapePressed: backWanted()
    Component.onCompleted: page.forceActiveFocus()

    HelpContents {
        id: contents
        x: Theme.margin
        y: 16
        width: Math.round(Math.min(300, screen.width * 0.26))
        height: parent.height - y
        chapters: screen.chapters
        place: screen.place
        leadsBack: HelpTarget.cameFrom !== ""
        onChosen: name => HelpTarget.chapter = name
        onBackWanted: screen.backWanted()
    }
    HelpPage {
        id: page
        anchors.left: contents.right
        anchors.leftMargin: 2 * Theme.gap
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        anchors.topMargin: 4
        anchors.bottomMargin: 4
        focus: true
        chapter: screen.chapters[screen.place]
    }
}
