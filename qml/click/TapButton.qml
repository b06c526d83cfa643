// SPDX-License-Identifier: GPL-3.0-or-later
// A button to tap the beat on. Each press counts as it goes down.
import QtQuick
import QtQuick.Templates as T
import Piolo

T.Button {
    id: button

    property string key: ""
    property int size: Theme.body

    /// The tempo of the taps, from the second on.
    signal tapped(string tempo)
    /// A tap. `stamp`: of the press, as for ClickModel.tapAt().
    signal beaten(var stamp)

    readonly property bool lit: down || flash.running

    implicitWidth: Math.max(Theme.touch, implicitContentWidth + 2 * Theme.gap)
    implicitHeight: Math.max(Theme.touch, implicitContentHeight + Theme.gap)
    hoverEnabled: true
    Accessible.role: Accessible.Button
    Accessible.name: key === "" ? text : qsTrId("parts.name-key").arg(text).arg(key)
    Accessible.onPressAction: area.press()

    background: Rectangle {
        radius: Theme.radius
        color: button.lit ? Theme.accentWash : Theme.card
        border.color: button.visualFocus ? Theme.focus : button.hovered ? Theme.ink : Theme.edge
        border.width: button.visualFocus ? 3 : button.hovered ? 2 : 1
    }
    contentItem: InkLabel {
        text: button.text
        key: button.key
        size: button.size
        ink: Theme.ink
    }

    TapArea {
        id: area
        anchors.fill: parent
        onMarked: stamp => {
            flash.restart();
            button.beaten(stamp);
        }
        onTapped: tempo => button.tapped(tempo)
    }
    Timer {
        id: flash
        interval: 120
    }
}
