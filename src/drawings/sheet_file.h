// SPDX-License-Identifier: GPL-3.0-or-later
// Practice sheets as the bytes of a file.
#pragma once

#include "core/base/result.h"
#include "core/history/notebook.h"
#include "plots/paper/paper_ladder.h"

#include <string>
#include <vector>

namespace piolo::drawings {

/// The sheet of these passages as a .pdf, .svg or .png, depending on the name `path`; nothing is written.
/// Creates an application if there is none, and needs no display. Faults as plots::paperBytes().
[[nodiscard]] Result<std::string> sheetFile(const std::string& path, const Notebook& notebook,
                                            const std::vector<Id>& passages, plots::PaperSize paper);

} // namespace piolo::drawings
