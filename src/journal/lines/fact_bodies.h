// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds' own keys, read and checked.
#pragma once

#include "core/history/fact.h"
#include "journal/json/json_object.h"

#include <cstddef>

namespace piolo::journal {

/// The body of the kind at `index` of FactBody; the first fault goes where `line` keeps it.
[[nodiscard]] FactBody bodyOf(std::size_t index, JsonObject& line);

} // namespace piolo::journal
