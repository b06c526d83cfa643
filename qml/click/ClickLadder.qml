// SPDX-License-Identifier: GPL-3.0-or-later
// The tempo between the rungs that lead up and down.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Item {
    id: ladder

    required property ClickModel click
    property real figureHeight: 120

    signal done()

    readonly property real rail: 6
    readonly property real inset: rail + 8
    readonly property real step: (width - 2 * inset - 8) / 2

    implicitHeight: 2 * 56 + figureHeight + 24

    Repeater {
        model: 2

        Rectangle {
            required property int index
            x: index * (ladder.width - width)
            width: ladder.rail
            height: ladder.height
            radius: width / 2
            color: Theme.rung
        }
    }
    Row {
        x: ladder.inset
        spacing: 8

        ClickRung {
            objectName: "clickUp1"
            click: ladder.click
            width: ladder.step
            by: 1
        }
        ClickRung {
            objectName: "clickUp5"
            click: ladder.click
            width: ladder.step
            by: 5
        }
    }
    ClickFigure {
        x: ladder.inset
        y: 56 + 12
        width: ladder.width - 2 * ladder.inset
        height: ladder.figureHeight
        click: ladder.click
        onDone: ladder.done()
    }
    Row {
        x: ladder.inset
        y: ladder.height - height
        spacing: 8

        ClickRung {
            objectName: "clickDown1"
            click: ladder.click
            width: ladder.step
            by: -1
        }
        ClickRung {
            objectName: "clickDown5"
            click: ladder.click
            width: ladder.step
            by: -5
        }
    }
}
