// SPDX-License-Identifier: GPL-3.0-or-later
// The text of a practice sheet on paper: one passage's ladder, and the words around it. The caller translates
// them.
#pragma once

#include <QString>
#include <QStringList>

#include <cstdint>
#include <vector>

namespace piolo::plots {

struct PaperRungText {
    QString tempo;
    bool target = false;
};

/// One passage's ladder, lowest rung first.
struct PaperLadder {
    QString title;
    QStringList lines; ///< below the title, at most four: piece and bars, tempi, the rule
    std::vector<PaperRungText> rungs;
    int circles = 5; ///< per rung, 1…100
};

struct PaperWords {
    QString day;       ///< "Day"
    QString misses;    ///< "misses"
    QString target;    ///< "target"
    QString notes;     ///< "Notes"
    QString howTo;     ///< how to fill in the sheet
    QString continued; ///< "%1, continued"
    QString page;      ///< "page %1 of %2"
};

enum class PaperSize : std::uint8_t { a4, letter };

} // namespace piolo::plots
