// SPDX-License-Identifier: GPL-3.0-or-later
// The scroll bar of a list or page: shown while there is more than fits.
import QtQuick
import QtQuick.Templates as T

T.ScrollBar {
    id: bar
    width: 10
    padding: 2
    minimumSize: 0.06
    policy: bar.size < 1 ? T.ScrollBar.AlwaysOn : T.ScrollBar.AlwaysOff
    Accessible.ignored: true

    contentItem: Rectangle {
        visible: bar.policy === T.ScrollBar.AlwaysOn
        radius: 3
        color: Theme.faint
    }
}
