// SPDX-License-Identifier: GPL-3.0-or-later
// The tempo of some passages over days or runs: zoomed, moved, and read point by point.
import QtQuick
import Piolo

Card {
    id: card

    required property LogModel log
    /// The wheel scrolls what the card is part of, and zooms only with Ctrl.
    property bool scrolled: false
    property bool saving: false
    property string savedAs: ""

    readonly property bool narrow: width < 600

    function save(path) {
        const fault = curves.save(path);
        form.report(fault);
        savedAs = fault === "" ? path : "";
        saving = fault !== "";
        if (!saving)
            curves.forceActiveFocus(Qt.TabFocusReason);
    }

    InkText {
        id: title
        x: Theme.gap
        y: card.narrow ? 14 : 18
        visible: card.narrow || x + width + 8 < buttons.x
        text: curves.by === "days" ? qsTrId("curve.by-day") : qsTrId("curve.by-run")
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
    }
    InkText {
        x: title.x
        y: title.y
        visible: !title.visible
        text: qsTrId("curve.tempo")
        font.weight: Font.DemiBold
        Accessible.role: Accessible.Heading
        Accessible.name: title.text
    }
    InkText {
        anchors.left: title.right
        anchors.leftMargin: 12
        anchors.right: card.narrow ? parent.right : buttons.left
        anchors.rightMargin: 12
        anchors.baseline: title.baseline
        visible: card.savedAs !== ""
        text: qsTrId("curve.saved").arg(card.savedAs)
        color: Theme.faint
        font.pixelSize: Theme.small
        elide: Text.ElideMiddle
        Accessible.role: Accessible.AlertMessage
    }
    Flow {
        id: buttons
        x: card.narrow ? Theme.gap : parent.width - width - 12
        y: card.narrow ? 42 : 8
        width: card.narrow ? parent.width - 2 * Theme.gap : undefined
        spacing: 8

        InkButton {
            objectName: "saveCurves"
            text: qsTrId("curve.save")
            enabled: !curves.empty
            onClicked: {
                card.saving = true;
                form.use(form.typed);
                form.take();
            }
        }
        InkButton {
            objectName: "zoomIn"
            text: "+"
            enabled: !curves.empty
            Accessible.name: qsTrId("curve.closer")
            onClicked: curves.zoomMiddle(0.5)
        }
        InkButton {
            objectName: "zoomOut"
            text: "−"
            enabled: !curves.whole
            Accessible.name: qsTrId("curve.farther")
            onClicked: curves.zoomMiddle(2)
        }
        InkButton {
            objectName: "showAll"
            text: qsTrId("curve.all")
            enabled: !curves.whole
            onClicked: curves.showAll()
        }
        Pills {
            label: qsTrId("curve.along")
            options: [
                {value: "days", text: qsTrId("curve.days")},
                {value: "runs", text: qsTrId("curve.runs")}
            ]
            value: curves.by
            onChosen: value => curves.by = value
        }
    }
    LogCurves {
        id: curves
        objectName: "logCurves"
        anchors.fill: parent
        anchors.topMargin: buttons.y + buttons.height + 4
        anchors.leftMargin: 8
        anchors.rightMargin: 8
        anchors.bottomMargin: 4
        log: card.log
        dark: Theme.dark
        family: Theme.family
        activeFocusOnTab: !empty
        Accessible.role: Accessible.Graphic
        Accessible.name: empty ? qsTrId("curve.none") : qsTrId("curve.spoken").arg(words)
        Accessible.description: pointedText !== "" ? pointedText
            : qsTrId("curve.spoken.keys")
        Keys.onPressed: event => {
            const reading = event.modifiers & Qt.ShiftModifier;
            const step = width / 8;
            if (event.key === Qt.Key_Plus || event.key === Qt.Key_Equal)
                zoomMiddle(0.5);
            else if (event.key === Qt.Key_Minus)
                zoomMiddle(2);
            else if (event.key === Qt.Key_0)
                showAll();
            else if (event.key === Qt.Key_Left)
                reading ? curves.step(-1) : pan(step);
            else if (event.key === Qt.Key_Right)
                reading ? curves.step(1) : pan(-step);
            else if (event.key === Qt.Key_Up || event.key === Qt.Key_Down)
                turn();
            else
                return;
            event.accepted = true;
        }

        MouseArea {
            property real last: 0

            anchors.fill: parent
            hoverEnabled: true
            onPressed: mouse => last = mouse.x
            onPositionChanged: mouse => {
                if (pressed)
                    curves.pan(mouse.x - last);
                else
                    curves.point(mouse.x, mouse.y);
                last = mouse.x;
            }
            onExited: if (!curves.activeFocus) curves.unpoint()
            onWheel: wheel => {
                wheel.accepted = !card.scrolled || (wheel.modifiers & Qt.ControlModifier);
                if (wheel.accepted)
                    curves.zoom(wheel.angleDelta.y > 0 ? 0.8 : 1.25, wheel.x);
            }
        }
        Rectangle {
            id: said
            visible: curves.pointedText !== ""
            x: Math.max(0, Math.min(curves.pointedAt.x - width / 2, curves.width - width))
            y: curves.pointedAt.y > height + 24 ? curves.pointedAt.y - height - 14 : curves.pointedAt.y + 18
            width: Math.min(spoken.implicitWidth + 20, curves.width)
            height: spoken.implicitHeight + 10
            radius: 6
            color: Theme.ink

            InkText {
                id: spoken
                anchors.centerIn: parent
                width: Math.min(implicitWidth, said.width - 20)
                text: curves.pointedText
                font.pixelSize: Theme.small
                color: Theme.paper
                elide: Text.ElideLeft
                Accessible.ignored: true
            }
        }
        Rectangle {
            anchors.fill: parent
            visible: curves.activeFocus
            color: "transparent"
            border.color: Theme.focus
            border.width: 2
            radius: 6
        }
    }
    Rectangle {
        anchors.left: curves.left
        anchors.right: curves.right
        anchors.top: curves.top
        height: form.height + 24
        visible: card.saving
        color: Theme.card
        border.color: Theme.edge
        radius: 8

        SaveLine {
            id: form
            x: 12
            y: 10
            width: parent.width - leave.width - 36
            part: "curves"
            kind: "curves"
            label: qsTrId("curve.file")
            placeholder: "~/curves.pdf"
            button: qsTrId("curve.save-file")
            onWanted: path => card.save(path)
        }
        InkButton {
            id: leave
            anchors.right: parent.right
            anchors.rightMargin: 12
            y: 31
            text: qsTrId("curve.leave")
            onClicked: card.saving = false
        }
    }
    InkText {
        anchors.centerIn: curves
        width: curves.width - 2 * Theme.gap
        visible: curves.empty
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.Wrap
        color: Theme.faint
        text: qsTrId("curve.empty")
    }
}
