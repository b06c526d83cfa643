// SPDX-License-Identifier: GPL-3.0-or-later
// All passages, and the form of the selected one.
// Qt 6.4's linter does not see ids outside a component.
// qmllint disable unqualified
import QtQuick
import Piolo

FocusScope {
    id: screen

    property PassageListModel passages: PracticeRoom.passages
    property PassageEditor editor: PracticeRoom.editor
    property MusicPicture picture: PracticeRoom.formPicture

    readonly property PassageForm form: place.item as PassageForm

    signal drillRequested(string passage)

    /// What is shown beside the list: "form", "music", "picture", "paper" or "files".
    property string view: "form"

    function showForm() {
        view = "form";
        form?.take();
    }
    function show(card, name) {
        view = name;
        card.item.begin();
    }
    function startNew() {
        view = "form";
        editor.startNew();
        form?.take();
    }
    function remove(passage) {
        passages.remove(passage);
        editor.startNew();
        takeBack.forceActiveFocus(Qt.TabFocusReason);
    }

    onViewChanged: HelpTarget.part = view === "form" ? "" : view
    Component.onDestruction: HelpTarget.part = ""
    onDrillRequested: passage => PracticeRoom.openDrill(passage)

    Connections {
        target: PracticeRoom
        function onFormWanted() {
            form?.take();
        }
        function onFormToBeDrilled() {
            if (place.visible)
                form?.drill();
        }
    }

    InkText {
        id: heading
        x: Theme.margin
        y: 16
        text: qsTrId("passages.title")
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkText {
        anchors.left: heading.right
        anchors.leftMargin: Theme.gap
        anchors.baseline: heading.baseline
        text: screen.passages.total > 0 ? Formatter.passages(screen.passages.total) : ""
        color: Theme.faint
    }
    InkButton {
        id: newPassage
        objectName: "newPassage"
        anchors.right: parent.right
        anchors.rightMargin: Theme.margin
        anchors.verticalCenter: heading.verticalCenter
        text: qsTrId("passages.new")
        mark: "+"
        ground: Theme.accent
        ink: Theme.accentInk
        enabled: !screen.editor.readOnly
        onClicked: screen.startNew()
    }

    InkButton {
        id: musicFile
        objectName: "musicFile"
        anchors.right: newPassage.left
        anchors.rightMargin: 12
        anchors.verticalCenter: heading.verticalCenter
        text: qsTrId("passages.from-score")
        enabled: !screen.editor.readOnly
        onClicked: screen.show(picker, "music")
    }
    InkButton {
        id: files
        objectName: "passageFiles"
        anchors.right: musicFile.left
        anchors.rightMargin: 12
        anchors.verticalCenter: heading.verticalCenter
        text: qsTrId("passages.files")
        onClicked: screen.show(exchange, "files")
    }
    InkButton {
        objectName: "onPaper"
        anchors.right: files.left
        anchors.rightMargin: 12
        anchors.verticalCenter: heading.verticalCenter
        text: qsTrId("passages.on-paper")
        onClicked: screen.show(paper, "paper")
    }

    PassagePane {
        id: pane
        x: Theme.margin
        anchors.top: newPassage.bottom
        anchors.topMargin: 12
        anchors.bottom: undo.top
        anchors.bottomMargin: 8
        width: Math.round(Math.min(640, (screen.width - 2 * Theme.margin) * 0.43))
        focus: true
        passages: screen.passages
        chosen: screen.editor.passage
        onChoose: passage => {
            if (screen.view === "music" || screen.view === "picture")
                screen.view = "form";
            screen.editor.load(passage);
        }
        onOpenDrill: passage => screen.drillRequested(passage)
    }
    Row {
        id: undo
        x: Theme.margin
        anchors.bottom: parent.bottom
        anchors.bottomMargin: screen.passages.lastRemoved === "" ? 0 : 16
        height: screen.passages.lastRemoved === "" ? 8 : implicitHeight
        visible: screen.passages.lastRemoved !== ""
        spacing: Theme.gap

        InkText {
            anchors.verticalCenter: parent.verticalCenter
            width: Math.min(implicitWidth, pane.width - takeBack.width - Theme.gap)
            text: qsTrId("passages.removed.notice").arg(screen.passages.lastRemoved)
            elide: Text.ElideRight
        }
        InkButton {
            id: takeBack
            objectName: "takeBack"
            text: qsTrId("passages.restore")
            onClicked: screen.passages.restoreLast()
        }
    }
    // The window shows its list first, and then the form.
    Loader {
        id: place
        x: pane.x + pane.width + Theme.gap
        width: parent.width - x - Theme.margin
        anchors.top: pane.top
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 16
        visible: screen.view === "form"
        active: PracticeRoom.shown
        sourceComponent: PassageForm {
            editor: screen.editor
            picture: screen.picture
            onPictureRequested: screen.show(card, "picture")
            onDrillRequested: passage => screen.drillRequested(passage)
            onThroughRequested: piece => PracticeRoom.openRunThrough(piece)
            onRemovalRequested: passage => screen.remove(passage)
        }
    }
    Kept {
        id: picker
        anchors.fill: place
        shown: screen.view === "music"
        sourceComponent: MusicFile {
            music: screen.editor.music
            onDone: screen.showForm()
        }
    }
    Kept {
        id: paper
        anchors.fill: place
        shown: screen.view === "paper"
        sourceComponent: PaperCard {
            sheet: PracticeRoom.sheet
            picks: PracticeRoom.picks
            runs: PracticeRoom.paper
            passage: screen.editor.passage
            onDone: screen.showForm()
        }
    }
    Kept {
        id: exchange
        anchors.fill: place
        shown: screen.view === "files"
        sourceComponent: FilesCard {
            exchange: PracticeRoom.exchange
            picks: PracticeRoom.picks
            passage: screen.editor.passage
            onDone: screen.showForm()
        }
    }

    Kept {
        id: card
        anchors.fill: place
        shown: screen.view === "picture"
        sourceComponent: PictureCard {
            picture: screen.picture
            title: screen.form ? screen.form.name(screen.editor.draft["title"]) : ""
            onDone: screen.showForm()
        }
    }

    Component.onCompleted: {
        if (editor.passage === "" && !editor.changed && passages.count > 0)
            editor.load(passages.idAt(0));
    }
}
