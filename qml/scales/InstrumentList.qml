// SPDX-License-Identifier: GPL-3.0-or-later
// Instruments by family, all of them visible. One stop of the Tab key: the arrow keys move, Return chooses.
// Qt 6.4's linter does not see ids outside a delegate.
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T

FocusScope {
    id: list

    /// As from ScaleChoices.found().
    property var families: []
    property string value: ""
    /// The instrument that Return chooses.
    property string current: ""
    /// The keys are here or in the search.
    property bool keyed: activeFocus
    property string label: ""

    readonly property var values: families.reduce((all, family) => all.concat(family.instruments.map(instrument => instrument.value)), [])
    readonly property int columns: Math.max(1, Math.floor(width / 440))

    signal picked(string value)
    signal reached(Item item)

    function move(by: int): void {
        const place = values.indexOf(current) + by;
        if (values.length > 0)
            current = values[Math.max(0, Math.min(place, values.length - 1))];
    }

    implicitHeight: flow.height
    activeFocusOnTab: true
    Accessible.role: Accessible.List
    Accessible.name: label
    Accessible.focusable: true
    Keys.onLeftPressed: move(-1)
    Keys.onUpPressed: move(-1)
    Keys.onRightPressed: move(1)
    Keys.onDownPressed: move(1)
    Keys.onReturnPressed: if (current !== "") picked(current)
    Keys.onEnterPressed: if (current !== "") picked(current)
    Keys.onSpacePressed: if (current !== "") picked(current)

    Flow {
        id: flow
        width: parent.width
        spacing: Theme.gap

        Repeater {
            model: list.families

            Column {
                id: family

                required property var modelData

                width: (flow.width - (list.columns - 1) * flow.spacing) / list.columns
                spacing: 6

                InkText {
                    text: family.modelData.text
                    color: Theme.faint
                    font.weight: Font.DemiBold
                    Accessible.role: Accessible.Heading
                }
                Flow {
                    width: parent.width
                    spacing: 8

                    Repeater {
                        model: family.modelData.instruments

                        T.AbstractButton {
                            id: pill

                            required property var modelData

                            readonly property bool chosen: modelData.value === list.value
                            readonly property bool aimed: list.keyed && modelData.value === list.current

                            objectName: "instrument-" + modelData.value
                            implicitWidth: implicitContentWidth
                            implicitHeight: Theme.touch
                            focusPolicy: Qt.NoFocus
                            hoverEnabled: true
                            text: modelData.text
                            Accessible.role: Accessible.ListItem
                            Accessible.name: text
                            Accessible.selected: chosen
                            Accessible.onPressAction: clicked()
                            onClicked: list.picked(modelData.value)
                            onAimedChanged: if (aimed) list.reached(pill)

                            background: Rectangle {
                                radius: height / 2
                                color: pill.chosen ? Theme.ink : pill.down ? Theme.accentWash : Theme.card
                                border.color: pill.aimed ? Theme.focus : pill.hovered ? Theme.ink : Theme.faint
                                border.width: pill.aimed ? 3 : 1
                            }
                            contentItem: InkText {
                                leftPadding: 16
                                rightPadding: 16
                                verticalAlignment: Text.AlignVCenter
                                text: pill.text
                                color: pill.chosen ? Theme.paper : Theme.ink
                                Accessible.ignored: true
                            }
                        }
                    }
                }
            }
        }
    }
}
