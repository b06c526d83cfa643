// SPDX-License-Identifier: GPL-3.0-or-later
// The content of a row of the list: name and standing, tempo and subdivision, progress to the target, and the
// streak.
import QtQuick
import Piolo

Item {
    id: face

    property string title: ""
    property string note: ""
    property string tempoText: ""
    property string targetText: ""
    property string subdivisionText: ""
    property real share: 0
    property int streak: 0
    property int cleanRuns: 1
    property bool secure: false
    readonly property bool roomy: width >= 430

    Column {
        id: names
        anchors.verticalCenter: parent.verticalCenter
        anchors.left: parent.left
        anchors.leftMargin: Theme.gap
        anchors.right: tempi.left
        anchors.rightMargin: 8
        spacing: 2

        InkText {
            width: parent.width
            text: face.title.replace(/–/g, "\u2060–\u2060") // "1–8" stays in one line
            font.weight: Font.DemiBold
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Accessible.ignored: true
        }
        InkText {
            width: parent.width
            text: (face.secure ? "✓ " : "") + face.note
            color: face.secure ? Theme.clean : Theme.faint
            font.pixelSize: Theme.small
            elide: Text.ElideRight
            Accessible.ignored: true
        }
    }
    Column {
        id: tempi
        anchors.verticalCenter: parent.verticalCenter
        anchors.right: way.left
        anchors.rightMargin: Theme.gap
        width: 112
        spacing: 2

        Row {
            spacing: 8

            InkText {
                id: now
                text: face.tempoText
                font.pixelSize: 22
                font.weight: Font.Bold
                Accessible.ignored: true
            }
            InkText {
                anchors.baseline: now.baseline
                text: qsTrId("passages.of-target").arg(face.targetText)
                color: Theme.faint
                font.pixelSize: Theme.small
                Accessible.ignored: true
            }
        }
        InkText {
            width: parent.width
            text: face.subdivisionText
            color: Theme.faint
            font.pixelSize: Theme.small
            elide: Text.ElideRight
            Accessible.ignored: true
        }
    }
    Column {
        id: way
        anchors.verticalCenter: parent.verticalCenter
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        width: face.roomy ? Math.min(170, face.width * 0.22) : 76
        spacing: 10

        Rectangle {
            width: parent.width
            height: 10
            radius: 5
            color: Theme.rung

            Rectangle {
                width: Math.max(face.share > 0 ? parent.height : 0, face.share * parent.width)
                height: parent.height
                radius: 5
                color: face.secure ? Theme.clean : Theme.accent
            }
        }
        StreakDots {
            streak: face.streak
            needed: face.cleanRuns
            size: face.cleanRuns > 10 ? Theme.small : face.cleanRuns > 6 ? 8 : face.roomy ? 12 : 9
            words: Formatter.streak(face.streak, face.cleanRuns)
            Accessible.ignored: true
        }
    }
}
