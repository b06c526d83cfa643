// SPDX-License-Identifier: GPL-3.0-or-later
// Practice that is dated in the future: a clock was wrong. One day puts all of it right.
import QtQuick
import Piolo

Column {
    id: dates

    required property LogDates model

    visible: model.text !== "" || model.doneText !== ""
    spacing: 8

    InkText {
        objectName: "futureDates"
        width: parent.width
        visible: text !== ""
        text: dates.model.text
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.ignored: text === ""
    }
    Flow {
        width: parent.width
        spacing: 12
        visible: dates.model.text !== ""

        Field {
            id: day
            objectName: "futureDatesDay"
            width: Math.min(260, parent.width)
            labelWidth: Math.min(400, dates.width)
            label: qsTrId("log.dates.day")
            text: dates.model.day
            fault: dates.model.dayFault
            onTyped: text => dates.model.day = text
            onAccepted: dates.model.putRight()
        }
        Item {
            width: put.implicitWidth
            height: day.boxY + put.implicitHeight

            InkButton {
                id: put
                objectName: "putDatesRight"
                y: day.boxY
                enabled: dates.model.dayFault === ""
                text: qsTrId("log.dates.put-right")
                onClicked: dates.model.putRight()
            }
        }
    }
    Row {
        spacing: 12
        visible: dates.model.doneText !== ""

        InkText {
            height: undo.height
            verticalAlignment: Text.AlignVCenter
            text: dates.model.doneText
            color: Theme.faint
            Accessible.role: Accessible.AlertMessage
            Accessible.ignored: text === ""
        }
        InkButton {
            id: undo
            objectName: "undoDates"
            text: qsTrId("log.dates.undo")
            onClicked: dates.model.undo()
        }
    }
}
