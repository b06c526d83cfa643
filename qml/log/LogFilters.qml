// SPDX-License-Identifier: GPL-3.0-or-later
// The filters of the log: piece, passage, kind, and how far back.
import QtQuick
import Piolo

Grid {
    id: filters

    required property LogModel log

    readonly property real each: (width - (columns - 1) * spacing) / columns

    columns: width < 560 ? 2 : 4
    spacing: width < 560 ? 8 : 12

    Choice {
        objectName: "filter-piece"
        width: filters.each
        bare: true
        label: qsTrId("log.filter.piece")
        options: filters.log.pieces
        value: filters.log.piece
        onChosen: value => filters.log.piece = value
    }
    Choice {
        objectName: "filter-passage"
        width: filters.each
        bare: true
        label: qsTrId("log.filter.passage")
        options: filters.log.passages
        value: filters.log.passage
        onChosen: value => filters.log.passage = value
    }
    Choice {
        objectName: "filter-kind"
        width: filters.each
        bare: true
        label: qsTrId("log.filter.kind")
        options: filters.log.kinds
        value: filters.log.kind
        onChosen: value => filters.log.kind = value
    }
    Choice {
        objectName: "filter-since"
        width: filters.each
        bare: true
        label: qsTrId("log.filter.since")
        options: filters.log.stretches
        value: filters.log.since
        onChosen: value => filters.log.since = value
    }
}
