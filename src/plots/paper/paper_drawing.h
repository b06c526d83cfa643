// SPDX-License-Identifier: GPL-3.0-or-later
// Practice sheets in black on white: the same picture from the command and the window.
#pragma once

#include "plots/paper/paper_layout.h"

#include <QByteArray>
#include <QFont>

class QPainter;

namespace piolo::plots {

struct PaperSheet {
    std::vector<PaperLadder> ladders;
    PaperWords words;
    PaperSize paper = PaperSize::a4;
    QFont font;
};

/// The most pages that an SVG or PNG holds, one below the other.
inline constexpr std::size_t mostPagesInPicture = 10;

/// Draws one page of the layout into 0,0 … its size. Titles and lines that are too long are elided. Text
/// needs a QGuiApplication.
void drawPaperPage(QPainter& painter, const PaperSheet& sheet, const PaperLayout& layout, std::size_t page);

// The bytes of a file. Empty if nothing could be drawn; SVG and PNG are also empty if there are too many
// pages.

[[nodiscard]] QByteArray paperPdf(const PaperSheet& sheet);
[[nodiscard]] QByteArray paperSvg(const PaperSheet& sheet);
[[nodiscard]] QByteArray paperPng(const PaperSheet& sheet);

} // namespace piolo::plots
