// SPDX-License-Identifier: GPL-3.0-or-later
// Reads and checks the keys of each kind of fact.
#pragma once

#include "core/history/fact.h"
#include "journal/json/json_object.h"

#include <cstddef>

namespace piolo::journal {

/// The body of the kind at `index` of FactBody; the first fault is stored where `line` keeps it.
[[nodiscard]] FactBody bodyOf(std::size_t index, JsonObject& line);

} // namespace piolo::journal
