// SPDX-License-Identifier: GPL-3.0-or-later
// Whether two readings of a folder say the same about everything that can be asked.
#pragma once

#include "core/history/notebook.h"
#include "journal/folder/practice_folder.h"

namespace piolo::test {

[[nodiscard]] bool sameNotebook(const Notebook& a, const Notebook& b);
/// All but the facts themselves.
[[nodiscard]] bool sameReading(const journal::FolderContents& a, const journal::FolderContents& b);
[[nodiscard]] Notebook notebookOf(journal::FolderContents contents);

} // namespace piolo::test
