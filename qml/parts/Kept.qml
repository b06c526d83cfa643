// SPDX-License-Identifier: GPL-3.0-or-later
// Something that is made when it is first shown, and kept from then on.
import QtQuick

Loader {
    id: kept

    property bool shown: false

    active: false
    visible: shown

    Binding on active {
        when: kept.shown
        value: true
        restoreMode: Binding.RestoreNone
    }
}
