// SPDX-License-Identifier: GPL-3.0-or-later
// A field of the form of a passage, in a grid.
import QtQuick
import QtQuick.Layouts

FormField {
    Layout.fillWidth: true
    Layout.preferredWidth: 1
    Layout.alignment: Qt.AlignTop
}
