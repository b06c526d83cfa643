// SPDX-License-Identifier: GPL-3.0-or-later
// All passages, and the page of the chosen one; its form, scores, paper and files take the page's place. A narrow window
// shows either the list or what was chosen.
// Qt 6.4's linter does not see ids outside a component, and does not know StandardKey.
// qmllint disable unqualified
import QtQuick
import Piolo

FocusScope {
    id: screen

    property PassageListModel passages: PracticeRoom.passages
    property PassageEditor editor: PracticeRoom.editor
    property MusicPicture picture: PracticeRoom.formPicture

    readonly property PassageForm form: formPlace.item as PassageForm
    readonly property bool narrow: width < 800
    readonly property bool fresh: editor.passage === ""

    /// What is shown beside the list: "page", "form", "music", "picture", "paper" or "files".
    property string view: "page"
    /// In a narrow window, it is shown instead of the list.
    property bool aside: false

    signal drillRequested(string passage)
    signal setRequested()

    function show(name) {
        view = name;
        aside = true;
        const places = {page: pagePlace, form: formPlace, music: picker, picture: card, paper: paper, files: exchange};
        const item = places[name].item;
        if (name === "form")
            item?.take();
        else if (name !== "page")
            item.begin();
    }
    /// After the form or what took its place: the page, or the form of a passage that is not saved yet.
    function showPassage() {
        if (fresh || editor.changed) {
            show("form");
        } else {
            show("page");
            pagePlace.item?.take();
        }
    }
    function showList() {
        view = fresh ? "form" : "page";
        aside = false;
    }
    function startNew() {
        editor.startNew();
        show("form");
    }
    function choose(passage) {
        editor.load(passage);
        view = fresh || editor.changed ? "form" : "page";
        aside = true;
    }
    function remove(passage) {
        passages.remove(passage);
        show("page");
        pagePlace.item?.takeRestore();
    }
    function drill() {
        if (view === "form")
            form?.drill();
        else if (!fresh)
            drillRequested(editor.passage);
    }

    onViewChanged: HelpTarget.part = view === "form" || view === "page" ? "" : view
    Component.onDestruction: HelpTarget.part = ""
    onDrillRequested: passage => PracticeRoom.openDrill(passage)
    onSetRequested: PracticeRoom.screen = "set"

    Connections {
        target: PracticeRoom
        function onBesideWanted(view: string) {
            screen.show(view);
        }
        function onShownToBeDrilled() {
            screen.drill();
        }
    }
    Shortcut {
        sequences: [StandardKey.Back]
        enabled: screen.visible && screen.narrow && screen.aside
        onActivated: screen.showList()
    }

    PassagesHead {
        id: head
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        visible: !(screen.narrow && screen.aside)
        narrow: screen.narrow
        passages: screen.passages
        readOnly: screen.editor.readOnly
        onWanted: what => {
            if (what === "new")
                screen.startNew();
            else if (what === "set")
                screen.setRequested();
            else if (what === "removed")
                screen.passages.removedToo = !screen.passages.removedToo;
            else if (what === "click")
                PracticeRoom.openClick();
            else
                screen.show(what);
        }
    }
    InkButton {
        id: back
        objectName: "toList"
        x: Theme.margin
        y: 8
        visible: screen.narrow && screen.aside
        text: qsTrId("passages.title")
        mark: "‹"
        onClicked: screen.showList()
    }
    PassagePane {
        id: pane
        x: Theme.margin
        anchors.top: head.bottom
        anchors.topMargin: 12
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 16
        width: screen.narrow ? parent.width - 2 * Theme.margin : Math.round(Math.min(640, (screen.width - 2 * Theme.margin) * 0.43))
        visible: !(screen.narrow && screen.aside)
        focus: true
        passages: screen.passages
        chosen: screen.editor.passage
        onChoose: passage => screen.choose(passage)
        onOpenDrill: passage => screen.drillRequested(passage)
    }
    // The window shows its list first, and then what is beside it.
    Item {
        id: side
        x: screen.narrow ? 0 : pane.x + pane.width + Theme.gap
        width: parent.width - x - (screen.narrow ? 0 : Theme.margin)
        y: screen.narrow ? back.y + back.height + 8 : pane.y
        height: parent.height - y - (screen.narrow ? 0 : 16)
        visible: !screen.narrow || screen.aside

        Loader {
            id: pagePlace
            anchors.fill: parent
            visible: screen.view === "page" && !screen.fresh
            active: PracticeRoom.shown
            sourceComponent: PassageSheet {
                page: PracticeRoom.page
                picture: screen.picture
                keys: PracticeRoom.keys
                readOnly: screen.editor.readOnly
                onDrillRequested: passage => screen.drillRequested(passage)
                onThroughRequested: piece => PracticeRoom.openRunThrough(piece)
                onEditRequested: screen.show("form")
                onRestoreRequested: passage => screen.passages.restore(passage)
            }
        }
        Kept {
            id: formPlace
            anchors.fill: parent
            shown: screen.view === "form" && PracticeRoom.shown
            sourceComponent: PassageForm {
                editor: screen.editor
                picture: screen.picture
                onPictureRequested: screen.show("picture")
                onDrillRequested: passage => screen.drillRequested(passage)
                onRemovalRequested: passage => screen.remove(passage)
                onDone: screen.showPassage()
            }
        }
        Kept {
            id: picker
            anchors.fill: parent
            shown: screen.view === "music"
            sourceComponent: MusicFile {
                music: screen.editor.music
                onDone: screen.showPassage()
            }
        }
        Kept {
            id: paper
            anchors.fill: parent
            shown: screen.view === "paper"
            sourceComponent: PaperCard {
                sheet: PracticeRoom.sheet
                picks: PracticeRoom.picks
                runs: PracticeRoom.paper
                passage: screen.editor.passage
                onDone: screen.showPassage()
            }
        }
        Kept {
            id: exchange
            anchors.fill: parent
            shown: screen.view === "files"
            sourceComponent: FilesCard {
                exchange: PracticeRoom.exchange
                picks: PracticeRoom.picks
                passage: screen.editor.passage
                onDone: screen.showPassage()
            }
        }
        Kept {
            id: card
            anchors.fill: parent
            shown: screen.view === "picture"
            sourceComponent: PictureCard {
                picture: screen.picture
                title: PracticeRoom.page.title
                onDone: screen.show("form")
            }
        }
    }

    Component.onCompleted: {
        if (editor.passage === "" && !editor.changed && passages.count > 0)
            editor.load(passages.idAt(0));
        if (fresh || editor.changed)
            showPassage();
    }
}
