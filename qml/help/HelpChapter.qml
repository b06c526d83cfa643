// SPDX-License-Identifier: GPL-3.0-or-later
// What the help says of one screen: data only, in qml/help a file each.
import QtQuick

QtObject {
    /// As the table of screens or HelpTarget.part has it.
    required property string name
    required property string title
    /// Paragraphs.
    property var purpose: []
    /// [keys, what they do]
    property var keys: []
    /// Paragraphs: why the tool does what it does, and what that stands on.
    property var why: []
    /// Authors, year, title and place, as they are cited everywhere.
    property var sources: []
    /// The cautions stand first.
    property bool careful: false
}
