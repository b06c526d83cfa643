// SPDX-License-Identifier: GPL-3.0-or-later
// Passages in words for a practice sheet on paper, and the sheet as a file.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/base/result.h"
#include "core/history/notebook.h"
#include "plots/paper/paper_drawing.h"

#include <span>

namespace piolo::plots {

/// The most passages on one sheet.
inline constexpr std::size_t mostOnPaper = 20;

/// Rungs from the current tempo to the target. `piece` is the name of its piece, or "".
[[nodiscard]] PaperLadder paperLadder(const PassageRecord& record, const QString& piece);
/// The sheet of these passages in order; unknown ones are left out.
[[nodiscard]] PaperSheet paperSheet(const Notebook& notebook, std::span<const Id> passages, PaperSize paper);
/// The bytes of a .pdf, .svg or .png, depending on the file name. Faults, with an empty location:
/// badFileKind, pagesNeedPdf, cannotWrite. Needs a QGuiApplication.
[[nodiscard]] Result<QByteArray> paperBytes(const QString& path, const PaperSheet& sheet);

} // namespace piolo::plots
