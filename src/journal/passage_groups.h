// SPDX-License-Identifier: GPL-3.0-or-later
// The groups of a passage fact, read and checked.
#pragma once

#include "core/passage.h"
#include "journal/json_object.h"

namespace piolo::journal {

[[nodiscard]] Title titleOf(JsonObject group);
[[nodiscard]] Music musicOf(JsonObject group);
[[nodiscard]] Tempi tempiOf(JsonObject group);

} // namespace piolo::journal
