// SPDX-License-Identifier: GPL-3.0-or-later
// Keys, the rule in plain words, what the practice log keeps, and cautions.
import QtQuick
import Piolo

FocusScope {
    id: screen

    property KeyBindings keys: PracticeRoom.keys

    Sheet {
        anchors.fill: parent
        anchors.leftMargin: Theme.margin
        anchors.rightMargin: Theme.gap
        readable: true
        focus: true
        spacing: 20
        topMargin: 20
        bottomMargin: 24
        Accessible.role: Accessible.Document
        Accessible.name: qsTr("Help")

        Words {
            text: qsTr("Help")
            font.pixelSize: Theme.heading
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        Flow {
            id: columns

            readonly property real part: width >= 900 ? (width - spacing) / 2 : width

            width: parent.width
            spacing: Theme.gap

            Column {
                width: columns.part
                spacing: Theme.gap

                Chapter {
                    width: parent.width
                    title: qsTr("Your keys")
                    lines: [qsTr("%1: start; while the click runs, mark a miss.").arg(screen.keys.markKeys), qsTr("%1: end an open-ended run clean.").arg(screen.keys.cleanKeys), qsTr("%1: take back the last mark.").arg(screen.keys.backKeys), qsTr("%1 and %2: the tempo up and down, while stopped.").arg(screen.keys.fasterKeys).arg(screen.keys.slowerKeys), qsTr("%1: hear the passage first, where its bars were picked from a score.").arg(screen.keys.hearKeys), qsTr("%1: stop.").arg(screen.keys.stopKeys), qsTr("%1: the next passage, while stopped.").arg(screen.keys.nextKeys), qsTr("%1 saves and drills what a passage's form holds; in the log %2 makes a passage of the bars that break.").arg(screen.keys.saveKeys).arg(screen.keys.stretchKeys), qsTr("In a run-through %1 marks a stop, %2 is the last note, %3 takes a stop back, and %4 gives up.").arg(screen.keys.markKeys).arg(screen.keys.cleanKeys).arg(screen.keys.backKeys).arg(screen.keys.stopKeys), screen.keys.pedalKeys === "" ? qsTr("One pedal can do all of it: the settings have that.") : qsTr("%1 does everything: a press starts or marks a miss; two presses take back; held, it stops the click, and while stopped it opens the next passage.").arg(screen.keys.pedalKeys), qsTr("Pedals and MIDI switches work as keys. Change any of them in the settings.")]
                }
                Chapter {
                    width: parent.width
                    title: qsTr("From slow to the whole piece")
                    lines: [qsTr("A passage goes through five stages: slow with the click, secure at the target, without the click, in its context with two bars on either side, and in run-throughs of the piece. When the log speaks for the next stage the drill says why; you decide, and may go back."), qsTr("Where it breaks: the log shows the misses of a passage by bar and beat, and makes a smaller passage of the worst bars, with a bar to run up."), qsTr("Play the piece through stands in a passage's form: %1 where the music stops, %2 at the last note.").arg(screen.keys.markKeys).arg(screen.keys.cleanKeys)]
                }
                Cautions {
                    width: parent.width
                }
            }
            Column {
                width: columns.part
                spacing: Theme.gap

                Chapter {
                    width: parent.width
                    title: qsTr("The rule")
                    lines: [qsTr("Choose a tempo at which nothing goes wrong. Touch one key, and only for a miss: a run that reaches its last bar without one is clean."), qsTr("A miss drops the tempo, but never below the floor. A full row of clean runs climbs one step, but never past the target. A miss or a climb starts the row again."), qsTr("A full row at the target counts as secure. Secure on three different days, and the passage is secure as a whole; the settings change how many days."), qsTr("Pressed late? A press in the breath after a clean run makes that run a miss after all."), qsTr("A new day opens two rungs below the last full row. The rule makes for few mistakes and an honest record; nobody has shown that climbing step by step beats every other way to practise.")]
                }
                Chapter {
                    width: parent.width
                    title: qsTr("Other ways to play")
                    lines: [qsTr("Felt as: quarter = 60 and eighth = 120 are one speed. Another beat turns tempo, target and steps over and keeps your row. A beat in which they would not come out even is not offered."), qsTr("Find the tempo: set the tempo you think you can play, and each miss drops until a full row has found yours."), qsTr("Articulation and rhythm: each articulation has a best of its own; another one starts the row again."), qsTr("Gentle near the target, in a passage's form: a miss there drops one climb, and at the target only the second in a row drops.")]
                }
                Chapter {
                    width: parent.width
                    title: qsTr("What the practice log keeps")
                    lines: [qsTr("Every run with its tempo, its day and where a miss was marked; every tempo set by hand; every change to a passage. Marks taken back stay in the log as taken back."), qsTr("It is written to the practice folder on this computer and nowhere else. Nothing is sent away. Copy the folder, or let your own file sync carry it, and all is there.")]
                }
            }
        }
    }
}
