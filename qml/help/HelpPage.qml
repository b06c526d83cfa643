// SPDX-License-Identifier: GPL-3.0-or-later
// One chapter of the help.
import QtQuick

ScrollColumn {
    id: page

    required property string title
    required property HelpChapter chapter
    /// Its title is at its head, because it is nowhere else.
    property bool titled: true

    readonly property real measure: Math.min(width - 40, 820)

    readable: true
    spacing: Theme.gap
    topMargin: 12
    bottomMargin: 24
    Accessible.role: Accessible.Document
    Accessible.name: title
    onChapterChanged: contentY = -topMargin

    InkText {
        x: 12
        width: page.measure
        visible: page.titled
        text: page.title
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        wrapMode: Text.Wrap
        Accessible.role: Accessible.Heading
    }
    Cautions {
        x: 12
        width: page.measure
        visible: page.chapter.careful
    }
    HelpPart {
        x: 12
        width: page.measure
        title: qsTrId("help.what")
        lines: page.chapter.purpose
    }
    HelpKeys {
        x: 12
        width: page.measure
        rows: page.chapter.keys
    }
    HelpPart {
        x: 12
        width: page.measure
        title: qsTrId("help.why")
        lines: page.chapter.why
    }
    HelpPart {
        x: 12
        width: page.measure
        title: qsTrId("help.sources")
        lines: page.chapter.sources.length === 0 ? [] : page.chapter.sources.concat([qsTrId("help.sources.hint")])
        small: true
    }
}
