// SPDX-License-Identifier: GPL-3.0-or-later
// Asked when the window is closed while something is not saved.
// Qt 6.4's linter wants no ids in a popup.
// qmllint disable deferred-property-id type
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Piolo

T.Popup {
    id: question

    property int unsaved: 0

    signal confirmed()

    function take() {
        if (opened && !activeFocus)
            cancel.forceActiveFocus(Qt.TabFocusReason);
    }

    objectName: "closingQuestion"
    anchors.centerIn: parent
    width: parent ? Math.min(560, parent.width - 2 * Theme.margin) : 0
    height: implicitContentHeight + 2 * padding
    padding: 2 * Theme.gap
    modal: true
    focus: true
    closePolicy: T.Popup.CloseOnEscape
    onOpened: take()
    // A drill that stops for this would take the focus to its screen.
    onActiveFocusChanged: Qt.callLater(take)

    background: Card {
    }
    T.Overlay.modal: Rectangle {
        color: Qt.rgba(0, 0, 0, 0.4)
    }
    contentItem: ColumnLayout {
        spacing: Theme.gap
        Accessible.role: Accessible.Dialog
        Accessible.name: title.text

        InkText {
            id: title
            Layout.fillWidth: true
            text: qsTrId("closing.title")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
            wrapMode: Text.Wrap
            Accessible.role: Accessible.Heading
        }
        InkText {
            Layout.fillWidth: true
            text: qsTrId("closing.unsaved", question.unsaved)
            wrapMode: Text.Wrap
        }
        Flow {
            Layout.fillWidth: true
            spacing: 12

            InkButton {
                id: cancel
                objectName: "closingCancel"
                text: qsTrId("closing.cancel")
                strong: true
                onClicked: question.close()
            }
            InkButton {
                objectName: "closingConfirm"
                text: qsTrId("closing.confirm")
                onClicked: {
                    question.close();
                    question.confirmed();
                }
            }
        }
    }
}
