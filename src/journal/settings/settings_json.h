// SPDX-License-Identifier: GPL-3.0-or-later
// Machine settings as JSON text.
#pragma once

#include "journal/json/json_object.h"
#include "journal/settings/machine_settings.h"

#include <string>
#include <string_view>

namespace piolo::journal {

/// What is there and right; the rest keeps its first value (`device` stays empty). Faults: notUtf8, badJson
/// (also for anything but an object), badFactValue.
[[nodiscard]] MachineSettings settingsFromJson(std::string_view text, FirstFault& first);
/// Indented, with a newline at the end.
[[nodiscard]] std::string settingsToJson(const MachineSettings& settings);

} // namespace piolo::journal
