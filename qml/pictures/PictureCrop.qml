// SPDX-License-Identifier: GPL-3.0-or-later
// A page with the frame around the passage: dragged by its edges and corners, or moved with the arrow keys.
import QtQuick
import Piolo

Item {
    id: crop

    required property MusicPicture picture
    /// The edges that the arrow keys move: a sum of PictureFrame's edges.
    property int edges: PictureFrame.All

    readonly property PictureFrame frame: picture.frame
    readonly property bool missing: page.status === Image.Error
    readonly property int whole: 10000
    readonly property var order: [PictureFrame.All, PictureFrame.Top, PictureFrame.Right, PictureFrame.Bottom, PictureFrame.Left]
    readonly property var names: [qsTrId("picture.edge.frame"), qsTrId("picture.edge.top"), qsTrId("picture.edge.right"), qsTrId("picture.edge.bottom"), qsTrId("picture.edge.left")]

    /// How close to an edge it can be grabbed, and the margin for that around the page.
    readonly property int reach: 14

    /// Keeps what is being moved visible.
    function reveal() {
        const top = edges & PictureFrame.Bottom && edges !== PictureFrame.All ? frame.bottom : frame.top;
        const bottom = edges & PictureFrame.Top && edges !== PictureFrame.All ? frame.top : frame.bottom;
        const from = top / whole * paper.height;
        const to = bottom / whole * paper.height + 2 * reach;
        if (to > scroll.contentY + scroll.height)
            scrollTo(to - scroll.height);
        if (from < scroll.contentY)
            scrollTo(from);
    }
    function scrollTo(y) {
        scroll.contentY = Math.max(0, Math.min(y, scroll.contentHeight - scroll.height));
    }
    function turn(by) {
        const place = Math.max(0, order.indexOf(edges));
        edges = order[(place + by + order.length) % order.length];
        reveal();
    }
    function nudge(event) {
        const step = event.modifiers & Qt.ShiftModifier ? 250 : 25;
        const ways = {};
        ways[Qt.Key_Left] = [-step, 0];
        ways[Qt.Key_Right] = [step, 0];
        ways[Qt.Key_Up] = [0, -step];
        ways[Qt.Key_Down] = [0, step];
        if (!(event.key in ways))
            return false;
        frame.move(edges, ways[event.key][0], ways[event.key][1]);
        reveal();
        return true;
    }
    /// The edges within reach of a point; the whole frame if inside it; 0 outside.
    function edgesAt(x, y) {
        const near = (a, b) => Math.abs(a - b) <= reach;
        if (x < hold.x - reach || x > hold.x + hold.width + reach || y < hold.y - reach || y > hold.y + hold.height + reach)
            return 0;
        const across = near(x, hold.x) ? PictureFrame.Left : near(x, hold.x + hold.width) ? PictureFrame.Right : 0;
        const down = near(y, hold.y) ? PictureFrame.Top : near(y, hold.y + hold.height) ? PictureFrame.Bottom : 0;
        return across + down === 0 ? PictureFrame.All : across + down;
    }

    objectName: "pictureCrop"
    activeFocusOnTab: true
    Accessible.role: Accessible.Graphic
    Accessible.focusable: true
    Accessible.name: qsTrId("picture.crop.spoken").arg(names[Math.max(0, order.indexOf(edges))])
    Accessible.description: frame.sentence

    onActiveFocusChanged: if (activeFocus) reveal()
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Space)
            turn(event.modifiers & Qt.ShiftModifier ? -1 : 1);
        else if (event.key === Qt.Key_PageUp || event.key === Qt.Key_PageDown)
            scrollTo(scroll.contentY + (event.key === Qt.Key_PageUp ? -0.8 : 0.8) * scroll.height);
        else if (!nudge(event))
            return;
        event.accepted = true;
    }

    Flickable {
        id: scroll
        anchors.fill: parent
        contentWidth: width
        contentHeight: paper.height + 2 * crop.reach
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Rectangle {
            id: paper
            readonly property real shape: page.implicitHeight > 0 ? page.implicitWidth / page.implicitHeight : 0.7
            x: crop.reach
            y: crop.reach
            width: scroll.width - 2 * crop.reach
            height: width / shape
            visible: page.status === Image.Ready
            color: "white"

            Image {
                id: page
                objectName: "page"
                anchors.fill: parent
                source: crop.picture.url
                sourceSize.width: 2048
                sourceSize.height: 2048
                asynchronous: true
                autoTransform: true
                mipmap: true
                Accessible.ignored: true
            }
            // Everything outside the frame is dimmed.
            component Shade: Rectangle {
                color: "#80302c26"
            }
            Shade {
                width: parent.width
                height: hold.y
            }
            Shade {
                y: hold.y + hold.height
                width: parent.width
                height: parent.height - y
            }
            Shade {
                y: hold.y
                width: hold.x
                height: hold.height
            }
            Shade {
                x: hold.x + hold.width
                y: hold.y
                width: parent.width - x
                height: hold.height
            }
            Item {
                id: hold
                x: crop.frame.left / crop.whole * paper.width
                y: crop.frame.top / crop.whole * paper.height
                width: (crop.frame.right - crop.frame.left) / crop.whole * paper.width
                height: (crop.frame.bottom - crop.frame.top) / crop.whole * paper.height

                // Those that the arrow keys move are thick.
                FrameSide {
                    picked: crop.edges & PictureFrame.Top
                    focused: crop.activeFocus
                    y: -thick / 2
                    width: parent.width
                    height: thick
                }
                FrameSide {
                    picked: crop.edges & PictureFrame.Bottom
                    focused: crop.activeFocus
                    y: parent.height - thick / 2
                    width: parent.width
                    height: thick
                }
                FrameSide {
                    picked: crop.edges & PictureFrame.Left
                    focused: crop.activeFocus
                    x: -thick / 2
                    width: thick
                    height: parent.height
                }
                FrameSide {
                    picked: crop.edges & PictureFrame.Right
                    focused: crop.activeFocus
                    x: parent.width - thick / 2
                    width: thick
                    height: parent.height
                }
            }
            MouseArea {
                property real pressedX: 0
                property real pressedY: 0
                property int dragged: 0

                // The handles extend slightly beyond the page.
                anchors.fill: parent
                anchors.margins: -crop.reach
                hoverEnabled: true
                preventStealing: true
                cursorShape: {
                    const at = crop.edgesAt(mouseX - crop.reach, mouseY - crop.reach);
                    if (at === PictureFrame.All)
                        return Qt.SizeAllCursor;
                    if (at === PictureFrame.Left || at === PictureFrame.Right)
                        return Qt.SizeHorCursor;
                    if (at === PictureFrame.Top || at === PictureFrame.Bottom)
                        return Qt.SizeVerCursor;
                    if (at === PictureFrame.Left + PictureFrame.Top || at === PictureFrame.Right + PictureFrame.Bottom)
                        return Qt.SizeFDiagCursor;
                    return at === 0 ? Qt.ArrowCursor : Qt.SizeBDiagCursor;
                }
                onPressed: mouse => {
                    crop.forceActiveFocus(Qt.MouseFocusReason);
                    dragged = crop.edgesAt(mouse.x - crop.reach, mouse.y - crop.reach);
                    pressedX = mouse.x;
                    pressedY = mouse.y;
                    crop.frame.hold();
                }
                onPositionChanged: mouse => {
                    if (pressed && dragged > 0)
                        crop.frame.dragTo(dragged, Math.round((mouse.x - pressedX) / paper.width * crop.whole), Math.round((mouse.y - pressedY) / paper.height * crop.whole));
                }
            }
        }
    }
    InkText {
        anchors.fill: parent
        visible: crop.missing
        wrapMode: Text.Wrap
        verticalAlignment: Text.AlignVCenter
        horizontalAlignment: Text.AlignHCenter
        text: qsTrId("picture.missing")
        color: Theme.faint
    }
}
