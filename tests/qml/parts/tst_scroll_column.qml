// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Piolo

TestCase {
    id: test
    name: "ScrollColumn"
    when: windowShown
    width: 300
    height: 200

    Component {
        id: maker

        ScrollColumn {
            width: 300
            height: 200
            topMargin: 16
            bottomMargin: 24
            readable: true

            Rectangle {
                width: 10
                height: 900
            }
        }
    }

    function test_itBeginsWithTheRoomAboveItAndGoesBackToIt() {
        const sheet = createTemporaryObject(maker, test);
        compare(sheet.contentY, -16);
        sheet.forceActiveFocus();
        keyClick(Qt.Key_PageDown);
        compare(sheet.contentY, 164);
        keyClick(Qt.Key_Home);
        compare(sheet.contentY, -16);
    }

    function test_itsEndShowsTheRoomBelowIt() {
        const sheet = createTemporaryObject(maker, test);
        sheet.forceActiveFocus();
        keyClick(Qt.Key_End);
        compare(sheet.contentY, 900 + 24 - 200);
    }
}
