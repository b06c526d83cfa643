// SPDX-License-Identifier: GPL-3.0-or-later
// Sizes and colours of every screen in one place: paper and ink.
pragma Singleton
import QtQuick

QtObject {
    property bool dark: false
    /// The window is small, so its margins are, too.
    property bool narrow: false

    readonly property color paper: dark ? "#1b1a17" : "#f7f2ea"
    readonly property color card: dark ? "#26241f" : "#fffdf7"
    // The edges of cards and controls, and rungs: 3:1 on paper and on cards (WCAG 2.2, 1.4.11).
    readonly property color edge: dark ? "#777163" : "#8f8673"
    readonly property color ink: dark ? "#f3ecdf" : "#1e2736"
    readonly property color faint: dark ? "#b5ad9e" : "#555c68"
    readonly property color accent: dark ? "#e0a448" : "#9c630f"
    readonly property color accentInk: dark ? "#1b1a17" : "#ffffff"
    readonly property color accentWash: dark ? "#4a3a1d" : "#f1dcb8"
    readonly property color clean: dark ? "#5cc4b4" : "#0f766b"
    readonly property color cleanWash: dark ? "#1d3d39" : "#d0e8e2"
    readonly property color miss: dark ? "#f0917c" : "#a0341f"
    readonly property color missWash: dark ? "#4a251d" : "#f5dad2"
    readonly property color rung: edge
    readonly property color focus: dark ? "#8ab4ff" : "#1f5fbf"

    readonly property string family: "Inter"
    readonly property int body: 16
    readonly property int small: 14
    readonly property int heading: 26
    readonly property int gap: 16
    readonly property int margin: narrow ? gap : 32
    readonly property int radius: 12
    readonly property int touch: 44
}
