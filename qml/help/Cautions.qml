// SPDX-License-Identifier: GPL-3.0-or-later
// The plain cautions, at the first start and in the help.
import QtQuick

Chapter {
    mark: "!"
    title: qsTr("Take care of yourself")
    border.color: Theme.miss
    lines: [
        qsTr("Pain, tingling or numbness means stop, and see a professional before you play on."),
        qsTr("Add minutes gradually: a little more each week, no sudden jumps, a break well before you need one."),
        qsTr("Rest your lip and your ears. Rest the thumb that carries the instrument, too."),
        qsTr("Keep headphones low: the horn is loud already, and this program does not know how loud it is at your ear."),
        qsTr("Your teacher, your doctor and the rules of the place where you practise come first.")
    ]
}
