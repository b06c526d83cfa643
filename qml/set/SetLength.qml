// SPDX-License-Identifier: GPL-3.0-or-later
// How long each turn lasts: so many runs, or so many minutes.
import QtQuick
import Piolo

Flow {
    id: length

    required property SetModel set

    spacing: Theme.gap

    Pills {
        objectName: "turnBy"
        label: qsTrId("set.length")
        options: [
            {
                value: "runs",
                text: qsTrId("set.by-runs")
            },
            {
                value: "minutes",
                text: qsTrId("set.by-minutes")
            }
        ]
        value: length.set.byMinutes ? "minutes" : "runs"
        onChosen: value => length.set.byMinutes = value === "minutes"
    }
    Stepper {
        objectName: "turnAmount"
        width: 240
        bare: true
        label: qsTrId("set.length")
        from: 1
        to: length.set.mostAmount
        value: length.set.amount
        words: length.set.amountText
        onMoved: value => length.set.amount = value
    }
}
