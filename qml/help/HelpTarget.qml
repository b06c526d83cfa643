// SPDX-License-Identifier: GPL-3.0-or-later
// Where the help opens, and where it leads back.
pragma Singleton
import QtQuick
import Piolo

QtObject {
    id: place

    /// What a screen shows of its parts, when that has a chapter of its own; "" otherwise.
    property string part: ""
    property string chapter: "start"
    /// The screen from which the help was opened; "" when it was not opened from one.
    property string cameFrom: ""

    /// The help at the chapter of the screen that is shown.
    function openHere() {
        if (PracticeRoom.screen === "help")
            return;
        chapter = PracticeRoom.screen === "welcome" ? "start" : part !== "" ? part : PracticeRoom.screen;
        cameFrom = PracticeRoom.screen;
        PracticeRoom.screen = "help";
    }
    function goBack() {
        if (cameFrom !== "")
            PracticeRoom.screen = cameFrom;
    }
}
