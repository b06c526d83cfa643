// SPDX-License-Identifier: GPL-3.0-or-later
// Marks of runs by their shapes: a dot clean, a triangle missed, a ring not counted.
import QtQuick

Text {
    property string marks: ""

    function inked(shapes, ink) {
        return "<font color=\"" + ink + "\">" + shapes + "</font>";
    }

    text: marks.replace(/[●]+/g, run => inked(run, Theme.clean)).replace(/[▼]+/g, run => inked(run, Theme.miss))
    textFormat: Text.StyledText
    color: Theme.faint
    font.family: Theme.family
    font.pixelSize: 14
    font.letterSpacing: 2
    elide: Text.ElideRight
    Accessible.ignored: true
}
