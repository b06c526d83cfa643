// SPDX-License-Identifier: GPL-3.0-or-later
// The help on one screen: data only, one file each in qml/help.
import QtQuick

QtObject {
    /// As in the table of screens or HelpTarget.part.
    required property string name
    required property string title
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
