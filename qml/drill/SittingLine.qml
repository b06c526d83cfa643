// SPDX-License-Identifier: GPL-3.0-or-later
// What has just happened, and its way to the log.
import QtQuick
import QtQuick.Templates as T

T.AbstractButton {
    id: line

    objectName: "sitting"
    visible: text !== ""
    implicitHeight: Math.max(Theme.touch, implicitContentHeight + 10)
    hoverEnabled: true
    Accessible.role: Accessible.Button
    Accessible.name: qsTrId("drill.sitting.to-log").arg(text)
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    contentItem: InkText {
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        text: line.text + "  ›"
        font.weight: Font.DemiBold
        font.underline: line.hovered || line.visualFocus
        wrapMode: Text.WordWrap
        Accessible.ignored: true
    }
}
