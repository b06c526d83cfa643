// SPDX-License-Identifier: GPL-3.0-or-later
// The help: a chapter for each screen and more, with what it is for, its keys, and why it works the way it does.
import QtQuick
import Piolo

FocusScope {
    id: screen

    property KeyBindings keys: PracticeRoom.keys

    signal backWanted

    readonly property bool narrow: width < 760
    readonly property var chapters: HelpChapters.all
    readonly property int current: Math.max(0, chapters.findIndex(chapter => chapter.name === HelpTarget.chapter))

    function load() {
        content.setSource(chapters[current].source, {
            bound: keys
        });
    }

    onBackWanted: {
        if (HelpTarget.cameFrom !== "")
            PracticeRoom.screen = HelpTarget.cameFrom;
    }
    Keys.onEscapePressed: backWanted()
    onCurrentChanged: load()
    Component.onCompleted: {
        load();
        page.forceActiveFocus();
    }

    Loader {
        id: content
    }
    HelpChapter {
        id: blank
        bound: screen.keys
    }

    HelpContents {
        id: contents
        x: Theme.margin
        y: 16
        width: screen.narrow ? screen.width - 2 * x : Math.round(Math.min(300, screen.width * 0.26))
        height: screen.narrow ? implicitHeight : parent.height - y
        dropping: screen.narrow
        chapters: screen.chapters
        current: screen.current
        leadsBack: HelpTarget.cameFrom !== ""
        onChosen: name => HelpTarget.chapter = name
        onBackWanted: screen.backWanted()
    }
    HelpPage {
        id: page
        anchors.left: screen.narrow ? parent.left : contents.right
        anchors.leftMargin: screen.narrow ? Theme.gap - 12 : 2 * Theme.gap
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        anchors.top: screen.narrow ? contents.bottom : parent.top
        anchors.bottom: parent.bottom
        anchors.topMargin: 4
        anchors.bottomMargin: 4
        focus: true
        titled: !screen.narrow
        title: screen.chapters[screen.current].title
        chapter: (content.item as HelpChapter) ?? blank
    }
}
