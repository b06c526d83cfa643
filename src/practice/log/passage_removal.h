// SPDX-License-Identifier: GPL-3.0-or-later
// Removing passages, and restoring them.
#pragma once

#include "practice/log/practice_book.h"

namespace piolo::practice {

/// Window thread. False if nothing was recorded: the passage is unknown, it is so already, or the folder is
/// read-only.
bool setRemoved(PracticeBook& book, Id passage, bool removed);

} // namespace piolo::practice
