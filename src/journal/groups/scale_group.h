// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's scale and the settings of scales as JSON.
#pragma once

#include "core/scales/scale.h"
#include "core/scales/scale_settings.h"
#include "journal/json/json_object.h"

#include <nlohmann/json.hpp>

namespace piolo::journal {

/// Reads the group; an invalid value is refused with its key.
[[nodiscard]] Scale scaleOf(JsonObject group);
[[nodiscard]] ScaleSettings scaleSettingsOf(JsonObject group);
[[nodiscard]] nlohmann::ordered_json groupOf(const Scale& scale);
[[nodiscard]] nlohmann::ordered_json groupOf(const ScaleSettings& settings);

} // namespace piolo::journal
