// SPDX-License-Identifier: GPL-3.0-or-later
// What an import did, in lines.
#pragma once

#include "core/passage/import_plan.h"

#include <span>
#include <string>

namespace piolo::command {

/// One line for each piece and passage that is not the same, then one that counts them all. Each ends in a
/// newline; names that hold line breaks or control characters are shown without them.
[[nodiscard]] std::string importReport(std::span<const ImportItem> plan, Differing differing);

} // namespace piolo::command
