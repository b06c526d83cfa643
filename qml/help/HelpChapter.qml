// SPDX-License-Identifier: GPL-3.0-or-later
// What a chapter of the help says: data only, one file each in qml/help.
import QtQuick
import Piolo

QtObject {
    /// The keys in force.
    required property KeyBindings bound
    /// Paragraphs.
    property var purpose: []
    /// [keys, what they do]
    property var keys: []
    /// Paragraphs: why the program works the way it does, and the evidence for it.
    property var why: []
    /// Authors, year, title and place, in the usual citation format.
    property var sources: []
    /// True if the cautions come first.
    property bool careful: false
}
