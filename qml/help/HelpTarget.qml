// SPDX-License-Identifier: GPL-3.0-or-later
// Where the help opens, and where it leads back.
pragma Singleton
import QtQuick

QtObject {
    id: target

    /// What a screen shows of its parts, when that has a chapter of its own; "" otherwise.
    property string part: ""
    property string chapter: "start"
    /// The screen from which the help was opened; "" when it was not opened from one.
    property string cameFrom: ""

    /// The help at the chapter of that screen; `usual`: the chapter where no part has its own.
    function openFrom(screen, usual) {
        chapter = part !== "" ? part : usual;
        cameFrom = screen;
    }
}
