// SPDX-License-Identifier: GPL-3.0-or-later
// The platform's file dialog. In a file of its own, because its module is only loaded once it is wanted.
import QtQuick
import QtQuick.Dialogs
import Piolo

Item {
    id: asking

    property string kind: ""
    property string title: ""
    property bool saving: false

    /// `asked`: the dialog has asked already whether to replace a file of that name.
    signal picked(url file, bool asked)
    signal closed

    function ask(typed: string): void {
        dialog.currentFolder = FileDialogs.folder;
        if (saving)
            dialog.selectedFile = FileDialogs.offered(kind, typed);
        dialog.open();
        dialog.drawnByQt = FileDialogs.keepWithin(Window.window);
    }

    FileDialog {
        id: dialog

        property bool drawnByQt: false

        title: asking.title
        acceptLabel: asking.saving ? qsTrId("files.save") : qsTrId("files.open")
        fileMode: asking.saving ? FileDialog.SaveFile : FileDialog.OpenFile
        nameFilters: FileDialogs.filters(asking.kind, asking.saving)
        onAccepted: {
            FileDialogs.remember(selectedFile);
            asking.picked(selectedFile, !drawnByQt);
            asking.closed();
        }
        onRejected: asking.closed()
    }
    Connections {
        target: asking.Window.window
        enabled: dialog.visible && dialog.drawnByQt
        function onWidthChanged(): void {
            FileDialogs.keepWithin(asking.Window.window);
        }
        function onHeightChanged(): void {
            FileDialogs.keepWithin(asking.Window.window);
        }
    }
}
