// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Window

Window {
    width: 1280
    height: 800
    visible: true
    title: qsTr("Piolo")
    color: Theme.paper
}
