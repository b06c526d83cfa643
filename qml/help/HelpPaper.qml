// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    name: "paper"
    title: qsTr("Practice on paper")
    purpose: [
        qsTr("Print a ladder for each passage, tick it in pencil where there is no screen, and enter the sheet later: the rule goes through its marks as if they had been played here, on the day that you give.")
    ]
    why: [
        qsTr("A sheet says how many, not in which order: on each rung misses count before circles."),
        qsTr("Runs of an earlier day go in no earlier than the last day of the passage's log: what the rule has done since is not undone.")
    ]
}
