// SPDX-License-Identifier: GPL-3.0-or-later
// A part of a day's bar: filled for drilling, hollow for other runs, striped for run-throughs.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick

Rectangle {
    id: piece

    property string part: "runs"

    clip: true
    color: part === "runs" ? Theme.accent : Theme.card
    border.color: Theme.accent
    border.width: part === "runs" ? 0 : Math.min(1.5, height / 2)

    Repeater {
        model: piece.part === "throughs" ? Math.max(0, Math.floor(piece.height / 4)) : 0

        Rectangle {
            required property int index

            y: 2 + index * 4
            width: piece.width
            height: 2
            color: Theme.accent
        }
    }
}
