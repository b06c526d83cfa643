// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Piolo

TestCase {
    id: laws
    name: "NoticeLine"
    when: windowShown
    width: 400
    height: 200
    visible: true

    Component {
        id: line
        NoticeLine { width: 300 }
    }

    function test_nothingToSayTakesNoRoom() {
        const item = createTemporaryObject(line, laws);
        compare(item.implicitHeight, 0);
        verify(!item.visible);
    }
    function test_aLongNoticeHasTwoLines() {
        const item = createTemporaryObject(line, laws, {text: "short"});
        const height = item.implicitHeight;
        verify(height > 0);
        item.text = "a very long sentence that would never fit on a line of three hundred pixels, whatever the letters";
        verify(item.implicitHeight > height);
        verify(item.implicitHeight < 2 * height);
        item.text += item.text + item.text;
        verify(item.implicitHeight < 2 * height);
    }
}
