// SPDX-License-Identifier: GPL-3.0-or-later
// Passages as a practice sheet on paper has them, in words, and the sheet as a file.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "core/base/result.h"
#include "core/history/notebook.h"
#include "plots/paper/paper_drawing.h"

#include <span>

namespace piolo::plots {

/// At most so many passages on one sheet.
inline constexpr std::size_t mostOnPaper = 20;

/// Rungs from the present tempo to the target. `piece` is the name of its piece, "" for none.
[[nodiscard]] PaperLadder paperLadder(const PassageRecord& record, const QString& piece);
/// The sheet of these passages, in their order; those that are not known are left out.
[[nodiscard]] PaperSheet paperSheet(const Notebook& notebook, std::span<const Id> passages, PaperSize paper);
/// The bytes of a .pdf, .svg or .png, by the name's end. Faults, with an empty place: badFileKind,
/// pagesNeedPdf, cannotWrite. Needs a QGuiApplication.
[[nodiscard]] Result<QByteArray> paperBytes(const QString& path, const PaperSheet& sheet);

} // namespace piolo::plots
