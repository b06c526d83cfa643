// SPDX-License-Identifier: GPL-3.0-or-later
// Everything about a passage, checked while typing. The editor keeps unsaved input.
import QtQuick
import Piolo

Card {
    id: form

    required property PassageEditor editor
    required property MusicPicture picture
    readonly property bool fresh: editor.passage === ""

    signal drillRequested(string passage)
    signal removalRequested(string passage)
    signal pictureRequested()
    /// What was typed is saved or given up.
    signal done()

    function name(typed) {
        return typed === "" ? editor.text.usualTitle : typed;
    }
    function take() {
        names.take();
    }
    function save() {
        if (editor.save() !== "")
            done();
    }
    function drill() {
        const passage = editor.changed || fresh ? editor.save() : editor.passage;
        if (passage !== "")
            drillRequested(passage);
    }

    InkText {
        id: title
        anchors.left: parent.left
        anchors.right: unsaved.left
        anchors.top: parent.top
        anchors.margins: Theme.gap
        anchors.leftMargin: 24
        text: form.fresh ? qsTrId("form.new") : form.name(form.editor.draft["title"])
        font.pixelSize: 22
        font.weight: Font.DemiBold
        elide: Text.ElideRight
        Accessible.role: Accessible.Heading
    }
    InkText {
        id: unsaved
        anchors.right: parent.right
        anchors.rightMargin: 24
        anchors.baseline: title.baseline
        text: form.editor.changed ? qsTrId("form.unsaved") : ""
        color: Theme.accent
        font.pixelSize: Theme.small
    }
    ScrollColumn {
        id: scroll
        anchors.top: title.bottom
        anchors.topMargin: 12
        x: 24
        width: parent.width - 32
        anchors.bottom: buttons.top
        anchors.bottomMargin: 12
        spacing: 12

        InkText {
            width: parent.width
            visible: text !== ""
            text: form.editor.text.originText
            color: Theme.faint
            elide: Text.ElideRight
        }
        NameForm {
            id: names
            width: parent.width
            editor: form.editor
        }
        MusicForm {
            width: parent.width
            editor: form.editor
        }
        PictureRow {
            width: parent.width
            picture: form.picture
            onWanted: form.pictureRequested()
        }
        RuleForm {
            width: parent.width
            editor: form.editor
        }
        RuleNote {
            width: parent.width
            editor: form.editor
        }
        MannerForm {
            width: parent.width
            editor: form.editor
        }
        ClickForm {
            width: parent.width
            editor: form.editor
        }
    }
    Flow {
        id: buttons
        anchors.left: parent.left
        anchors.right: removal.left
        anchors.bottom: parent.bottom
        anchors.margins: Theme.gap
        anchors.leftMargin: 24
        spacing: 12

        InkButton {
            objectName: "save"
            text: qsTrId("form.save")
            strong: enabled
            enabled: form.editor.valid && !form.editor.readOnly && (form.editor.changed || form.fresh)
            onClicked: form.save()
        }
        InkButton {
            objectName: "drillIt"
            text: form.editor.changed || form.fresh ? qsTrId("form.save-and-drill") : qsTrId("form.drill")
            enabled: form.editor.valid && !(form.editor.readOnly && (form.editor.changed || form.fresh))
            onClicked: form.drill()
        }
        InkButton {
            objectName: "revert"
            text: form.editor.changed ? qsTrId("form.discard") : qsTrId("parts.back")
            onClicked: {
                form.editor.revert();
                form.done();
            }
        }
    }
    InkButton {
        id: removal
        objectName: "remove"
        anchors.right: parent.right
        anchors.rightMargin: 24
        anchors.bottom: buttons.bottom
        visible: !form.fresh && !form.editor.readOnly
        text: qsTrId("form.remove")
        ink: Theme.miss
        onClicked: form.removalRequested(form.editor.passage)
    }
}
