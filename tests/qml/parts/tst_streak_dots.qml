// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Piolo

TestCase {
    id: laws
    name: "StreakDots"
    when: windowShown
    width: 400
    height: 100
    visible: true

    Component {
        id: dots
        StreakDots {}
    }

    function circles(item) {
        const found = [];
        for (let row = 0; row < item.children.length; ++row) {
            const shown = item.children[row];
            for (let at = 0; shown.visible && at < shown.children.length; ++at)
                if (shown.children[at].radius > 0) found.push(shown.children[at]);
        }
        return found;
    }
    function filled(item) {
        return circles(item).filter(circle => !Qt.colorEqual(circle.color, "transparent")).length;
    }

    function test_asManyCirclesAsRunsAreNeeded() {
        const item = createTemporaryObject(dots, laws, {needed: 5, streak: 3});
        compare(circles(item).length, 5);
        compare(filled(item), 3);
    }
    function test_aMissEmptiesThem() {
        const item = createTemporaryObject(dots, laws, {needed: 5, streak: 3});
        item.streak = 0;
        compare(filled(item), 0);
        compare(circles(item).length, 5);
    }
    function test_moreThanTenAreShownAsAFigure() {
        const item = createTemporaryObject(dots, laws, {needed: 40, streak: 12});
        compare(circles(item).length, 1);
        verify(item.implicitWidth > 0);
    }
}
