// SPDX-License-Identifier: GPL-3.0-or-later
// Where the help opens, and where it returns to.
pragma Singleton
import QtQuick

QtObject {
    id: target

    /// The part that a screen shows, if that has a chapter of its own; otherwise "".
    property string part: ""
    property string chapter: "start"
    /// The screen from which the help was opened; otherwise "".
    property string cameFrom: ""

    /// Opens the help at the chapter of that screen; `usual`: the chapter if no part has its own.
    function openFrom(screen, usual) {
        chapter = part !== "" ? part : usual;
        cameFrom = screen;
    }
}
