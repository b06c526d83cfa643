// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

HelpChapter {
    purpose: [
        qsTrId("help.settings.what.belongs"),
        qsTrId("help.settings.what.keys")
    ]
    why: [
        qsTrId("help.settings.why.choices"),
        qsTrId("help.settings.why.level")
    ]
    sources: ["A. L. Simmons (2012), “Distributed practice and procedural memory consolidation in musicians' skill learning”, Journal of Research in Music Education 59(4), 357–368"]
}
