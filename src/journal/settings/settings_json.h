// SPDX-License-Identifier: GPL-3.0-or-later
// Machine settings as JSON text.
#pragma once

#include "journal/json/json_object.h"
#include "journal/settings/machine_settings.h"

#include <string>
#include <string_view>

namespace piolo::journal {

/// Takes the values that are present and valid; the others keep their defaults (`device` stays empty).
/// Faults: notUtf8, badJson (also for anything but an object), badFactValue.
[[nodiscard]] MachineSettings settingsFromJson(std::string_view text, FirstFault& first);
/// Indented, ending with a newline.
[[nodiscard]] std::string settingsToJson(const MachineSettings& settings);

} // namespace piolo::journal
