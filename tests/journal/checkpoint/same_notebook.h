// SPDX-License-Identifier: GPL-3.0-or-later
// Compares two readings of a folder by everything that can be queried.
#pragma once

#include "core/history/notebook.h"
#include "journal/folder/practice_folder.h"

namespace piolo::test {

[[nodiscard]] bool sameNotebook(const Notebook& a, const Notebook& b);
/// Everything except the facts themselves.
[[nodiscard]] bool sameReading(const journal::FolderContents& a, const journal::FolderContents& b);
[[nodiscard]] Notebook notebookOf(journal::FolderContents contents);

} // namespace piolo::test
