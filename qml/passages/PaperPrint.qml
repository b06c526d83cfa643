// SPDX-License-Identifier: GPL-3.0-or-later
// Which ladders to put on a sheet, on what paper, and in which file.
import QtQuick
import Piolo

Item {
    id: side

    required property PracticeSheet sheet
    required property PassagePicks picks

    InkText {
        id: about
        width: parent.width
        text: qsTrId("paper.print.hint")
        color: Theme.faint
        wrapMode: Text.WordWrap
    }
    PickList {
        anchors.top: about.bottom
        anchors.topMargin: 12
        anchors.bottom: papers.top
        anchors.bottomMargin: 12
        width: parent.width
        picks: side.picks
    }
    Pills {
        id: papers
        anchors.bottom: saving.top
        anchors.bottomMargin: 12
        width: parent.width - summary.width
        label: qsTrId("paper.print.paper")
        options: [
            {value: "a4", text: qsTrId("paper.print.a4")},
            {value: "letter", text: qsTrId("paper.print.letter")}
        ]
        value: side.sheet.paper
        onChosen: value => side.sheet.paper = value
    }
    InkText {
        id: summary
        objectName: "sheet-summary"
        anchors.right: parent.right
        anchors.verticalCenter: papers.verticalCenter
        text: side.sheet.summary
        color: Theme.faint
    }
    SaveLine {
        id: saving
        anchors.bottom: parent.bottom
        width: parent.width
        part: "sheet"
        kind: "sheet"
        label: qsTrId("paper.print.file")
        placeholder: "~/sheet.pdf"
        button: qsTrId("paper.print.save")
        ready: side.sheet.ready
        onWanted: path => saving.report(side.sheet.save(path))
    }
}
