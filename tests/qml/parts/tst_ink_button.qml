// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Piolo

TestCase {
    id: laws
    name: "InkButton"
    when: windowShown
    width: 400
    height: 200
    visible: true

    Component {
        id: button
        InkButton {
            text: "Start"
            key: "Space"
        }
    }
    SignalSpy {
        id: clicks
        signalName: "clicked"
    }

    function test_itIsLargeEnoughForAFinger() {
        const item = createTemporaryObject(button, laws);
        verify(item.height >= Theme.touch);
        verify(item.width >= Theme.touch);
    }
    function test_theMousePressesIt() {
        const item = createTemporaryObject(button, laws);
        clicks.target = item;
        clicks.clear();
        mouseClick(item);
        compare(clicks.count, 1);
    }
    function test_theKeyboardPressesIt() {
        const item = createTemporaryObject(button, laws);
        clicks.target = item;
        clicks.clear();
        item.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Space);
        compare(clicks.count, 1);
    }
    function test_focusIsSeen() {
        const item = createTemporaryObject(button, laws);
        const before = item.background.border.width;
        item.forceActiveFocus(Qt.TabFocusReason);
        verify(item.background.border.width > before);
    }
}
