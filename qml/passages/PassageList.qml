// SPDX-License-Identifier: GPL-3.0-or-later
// The passages grouped by piece. Up and Down move, Return opens.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Piolo

ListView {
    id: list
    objectName: "passageList"

    required property PassageListModel passages
    property string chosen: ""
    // A heading stays while its piece's name or date changes.
    readonly property int changes: passages.changes

    signal choose(string passage)
    signal openDrill(string passage)

    function follow() {
        currentIndex = passages.rowOf(chosen);
    }

    model: passages
    spacing: 8
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    keyNavigationEnabled: true
    activeFocusOnTab: false
    section.property: "section"
    Accessible.role: Accessible.List
    Accessible.name: qsTrId("passages.title")
    onChosenChanged: follow()
    onCountChanged: follow()

    section.delegate: Item {
        id: heading

        required property string section

        width: list.width - 14
        implicitHeight: 48

        InkText {
            anchors.left: parent.left
            anchors.right: due.left
            anchors.rightMargin: 8
            anchors.bottom: parent.bottom
            anchors.bottomMargin: 8
            text: list.changes < 0 ? "" : list.passages.sectionTitle(heading.section)
            font.pixelSize: 18
            font.weight: Font.DemiBold
            elide: Text.ElideRight
            Accessible.role: Accessible.Heading
        }
        InkText {
            id: due
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            anchors.bottomMargin: 8
            text: list.changes < 0 ? "" : list.passages.sectionDue(heading.section)
            color: Theme.faint
            font.pixelSize: Theme.small
        }
    }
    delegate: PassageLine {
        id: line

        required property int index

        width: list.width - 14
        chosen: passageId === list.chosen
        activeFocusOnTab: true
        onActiveFocusChanged: if (activeFocus) list.positionViewAtIndex(index, ListView.Contain)
        onClicked: list.choose(passageId)
        onDoubleClicked: list.openDrill(passageId)
        Keys.onReturnPressed: list.openDrill(passageId)
        Keys.onUpPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
        Keys.onDownPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
    }

    T.ScrollBar.vertical: ScrollMark {
    }
}
