// SPDX-License-Identifier: GPL-3.0-or-later
// The group of a passage fact that describes its click.
#pragma once

#include "core/passage/click_pattern.h"
#include "journal/json/json_object.h"

namespace piolo::journal {

/// The first fault is stored where `group` keeps it.
[[nodiscard]] ClickPattern clickOf(JsonObject group);
[[nodiscard]] nlohmann::ordered_json groupOf(const ClickPattern& click);

} // namespace piolo::journal
