// SPDX-License-Identifier: GPL-3.0-or-later
// A field of the form of a passage.
import QtQuick
import Piolo

Field {
    id: field

    required property PassageEditor editor
    required property string name

    objectName: "field-" + name
    text: editor.draft[name] ?? ""
    fault: editor.faults[name] ?? ""
    readOnly: editor.readOnly
    onTyped: text => editor.set(name, text)
}
