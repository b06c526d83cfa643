// SPDX-License-Identifier: GPL-3.0-or-later
// An item that is created when it is first shown, and kept from then on.
import QtQuick

Loader {
    property bool shown: false

    active: false
    visible: shown

    onShownChanged: if (shown) active = true
    Component.onCompleted: if (shown) active = true
}
