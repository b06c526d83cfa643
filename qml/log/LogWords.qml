// SPDX-License-Identifier: GPL-3.0-or-later
// The top of the log: filters, the two weeks in a line, and the worst passages.
import QtQuick
import Piolo

Column {
    id: words

    required property LogModel log

    readonly property bool wide: width >= 820

    spacing: 10

    Item {
        width: parent.width
        implicitHeight: filters.visible ? filters.y + filters.height : heading.height

        InkText {
            id: heading
            height: Theme.touch
            verticalAlignment: Text.AlignVCenter
            text: qsTrId("log.title")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        LogFilters {
            id: filters
            x: words.wide ? heading.width + 2 * Theme.gap : 0
            y: words.wide ? 0 : heading.height + 4
            width: parent.width - x
            log: words.log
            visible: !words.log.nothingYet
        }
    }
    FutureDates {
        width: parent.width
        model: words.log.dates
    }
    InkText {
        objectName: "weeks"
        width: parent.width
        visible: text !== ""
        text: words.width < 720 ? words.log.figures.weekText.replace("  ·  ", "\n") : words.log.figures.weekText
        wrapMode: Text.Wrap
    }
    WorstList {
        width: parent.width
        log: words.log
    }
}
