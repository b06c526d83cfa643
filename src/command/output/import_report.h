// SPDX-License-Identifier: GPL-3.0-or-later
// Reports what an import did.
#pragma once

#include "core/passage/import_plan.h"

#include <span>
#include <string>

namespace piolo::command {

/// One line for each piece and passage that differs, then one with totals. Each ends with a newline; line
/// breaks and control characters in names are removed.
[[nodiscard]] std::string importReport(std::span<const ImportItem> plan, Differing differing);

} // namespace piolo::command
