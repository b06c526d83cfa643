// SPDX-License-Identifier: GPL-3.0-or-later
// Where everything goes on the pages of a practice sheet, before anything is drawn.
#pragma once

#include "plots/paper/paper_ladder.h"

#include <QRectF>
#include <QSize>

#include <span>

namespace piolo::plots {

/// One rung. Its circles fill lines of at most `PaperBlock::circlesToLine`.
struct PaperRow {
    std::size_t rung = 0;
    QRectF box;
    QRectF tempo;
    std::vector<QRectF> circles;
    QRectF misses;
};

/// A passage, or as much of it as fits on a page.
struct PaperBlock {
    std::size_t ladder = 0;
    bool continued = false; ///< its first rungs are on an earlier page
    QRectF heading;
    std::vector<QRectF> columns; ///< of rungs, from left to right
    std::vector<PaperRow> rows;  ///< lowest rung first; within a column, the lowest is at the bottom
    QRectF notes;
};

struct PaperPage {
    std::vector<PaperBlock> blocks;
};

struct PaperLayout {
    QSize size; ///< of a page; 96 device-independent pixels per inch
    QRectF content;
    std::vector<PaperPage> pages;
};

/// 210 × 297 mm, or 8½ × 11 inches.
[[nodiscard]] QSize pixelsOf(PaperSize paper);
/// Short ladders share a page; a long one continues in more columns, then on the next page. Needs no font.
[[nodiscard]] PaperLayout layOutPaper(std::span<const PaperLadder> ladders, PaperSize paper);

} // namespace piolo::plots
