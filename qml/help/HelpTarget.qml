// SPDX-License-Identifier: GPL-3.0-or-later
// Where the help opens, and where it returns to.
pragma Singleton
import QtQuick
import Piolo

QtObject {
    id: target

    /// The part that a screen shows, as in the table of help chapters; "" for the screen as a whole.
    property string part: ""
    property string chapter: ""
    /// The screen from which the help was opened; otherwise "".
    property string cameFrom: ""

    /// Opens the help at the chapter of that screen and its part.
    function openFrom(screen) {
        chapter = HelpChapters.openedFrom(screen, part);
        cameFrom = screen;
    }
}
