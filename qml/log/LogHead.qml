// SPDX-License-Identifier: GPL-3.0-or-later
// What the log says about all days: the weeks, the worst passages, curves, minutes and breaks. The list of days
// has its place at the lower left, or below all of it.
import QtQuick
import Piolo

Item {
    id: head

    required property LogModel log
    required property KeyBindings keys
    property bool above: false

    /// Above the list, two cards are side by side if that leaves each of them wide enough.
    readonly property bool paired: width >= 820
    readonly property real margin: above ? 0 : Theme.margin
    readonly property real below: words.y + words.height + Theme.gap
    readonly property real inner: width - 2 * margin
    readonly property real side: Math.round(Math.min(460, inner * 0.34))
    readonly property real space: height - below - Theme.gap
    /// A passage without misses needs only its title and a sentence.
    readonly property bool brief: breaks.bars.length === 0
    /// The height of the minutes beside the list.
    readonly property real minutesHeight: brief ? space - 84 - Theme.gap : Math.round((space - Theme.gap) * 0.42)
    readonly property real half: (inner - Theme.gap) / 2
    /// Where the list goes if it is beside the cards.
    readonly property rect room: Qt.rect(margin, curves.y + curves.height + Theme.gap, curves.width,
                                         height - curves.y - curves.height - 2 * Theme.gap)

    signal drillRequested(string passage)

    // Above the list, and without a look at the height that follows from it.
    readonly property real firstCard: brief && !paired ? 84 : 340
    readonly property real minutesAbove: paired ? 340 : 240
    readonly property real curvesAbove: 320
    readonly property real cards: paired ? firstCard : firstCard + Theme.gap + minutesAbove

    implicitHeight: log.nothingYet ? words.y + words.height : below + cards + Theme.gap + curvesAbove

    LogWords {
        id: words
        x: head.margin
        y: Theme.gap
        width: head.inner
        log: head.log
    }
    BreaksCard {
        id: breaks
        visible: !head.log.nothingYet || !head.above
        x: head.above ? 0 : head.margin + head.inner - head.side
        y: head.above ? head.below : minutes.y + minutes.height + Theme.gap
        width: head.above ? (head.paired ? head.half : head.inner) : head.side
        height: !head.above ? head.space - head.minutesHeight - Theme.gap : head.firstCard
        figures: head.log.figures
        keys: head.keys
        onDrillRequested: passage => head.drillRequested(passage)
    }
    MinutesCard {
        id: minutes
        visible: breaks.visible
        x: head.above ? (head.paired ? head.half + Theme.gap : 0) : breaks.x
        y: head.above && !head.paired ? breaks.y + breaks.height + Theme.gap : head.below
        width: breaks.width
        height: !head.above ? head.minutesHeight : head.minutesAbove
        figures: head.log.figures
    }
    CurveCard {
        id: curves
        visible: breaks.visible
        x: head.margin
        y: head.above ? minutes.y + minutes.height + Theme.gap : head.below
        width: head.above ? head.inner : head.inner - head.side - Theme.gap
        height: head.above ? head.curvesAbove : Math.round(head.space * 0.46)
        scrolled: head.above
        log: head.log
    }
}
