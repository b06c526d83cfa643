// SPDX-License-Identifier: GPL-3.0-or-later
// A chapter for each screen: what it is for, its keys, and why it does what it does, with sources.
import QtQuick
import Piolo

FocusScope {
    id: screen

    readonly property list<HelpChapter> chapters: [
        HelpStart {},
        HelpPassages {},
        HelpMusic {},
        HelpPicture {},
        HelpDrill {},
        HelpRunThrough {},
        HelpScales {},
        HelpLog {},
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

    Keys.onEscapePressed: HelpTarget.goBack()
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
        onBackWanted: HelpTarget.goBack()
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
