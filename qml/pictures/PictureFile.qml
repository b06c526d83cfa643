// SPDX-License-Identifier: GPL-3.0-or-later
// Where the picture of the music comes from: a file, a page of a PDF, or a page that the piece already has.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import Piolo

Column {
    id: source

    required property MusicPicture picture
    property string typed: ""

    readonly property PictureTaking taking: picture.taking
    readonly property var offers: picture.offers

    function take() {
        path.take();
    }

    spacing: 12

    InkText {
        width: parent.width
        text: qsTrId("picture.file.hint")
        color: Theme.faint
        wrapMode: Text.WordWrap
    }
    FileChoice {
        id: path
        width: parent.width
        part: "picture"
        kind: "picture"
        label: qsTrId("picture.file")
        fault: source.taking.fault
        text: source.typed
        onTyped: text => {
            source.typed = text;
            source.taking.close();
        }
        onAccepted: source.taking.read(source.typed)
        onPicked: file => {
            source.typed = file;
            source.taking.read(file);
        }
    }
    Row {
        visible: source.taking.pages > 0
        spacing: 12

        Stepper {
            objectName: "picture-page"
            width: 160
            label: qsTrId("picture.page").arg(source.taking.pages)
            words: source.taking.page
            from: 1
            to: source.taking.pages
            value: source.taking.page
            onMoved: value => source.taking.page = value
        }
        InkButton {
            objectName: "picture-take-page"
            anchors.bottom: parent.bottom
            text: qsTrId("picture.take-page")
            strong: enabled
            enabled: !source.taking.busy
            onClicked: source.taking.takePage()
        }
    }
    Row {
        visible: source.taking.pages === 0 || source.taking.busy
        spacing: 12

        InkButton {
            objectName: "picture-read"
            text: qsTrId("picture.take")
            visible: source.taking.pages === 0
            strong: enabled
            enabled: source.typed !== "" && !source.taking.busy
            onClicked: source.taking.read(source.typed)
        }
        InkText {
            anchors.verticalCenter: parent.verticalCenter
            visible: source.taking.busy
            text: qsTrId("picture.reading")
            color: Theme.faint
        }
    }
    InkText {
        width: parent.width
        visible: source.offers.length > 0
        topPadding: 8
        text: qsTrId("picture.or-page")
        font.weight: Font.DemiBold
        elide: Text.ElideRight
    }
    Repeater {
        model: source.offers

        InkButton {
            required property var modelData
            objectName: "picture-offered"
            width: Math.min(implicitWidth, source.width)
            text: modelData.text
            onClicked: source.picture.takeOffered(modelData.value)
        }
    }
}
