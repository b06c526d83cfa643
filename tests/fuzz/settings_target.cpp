// SPDX-License-Identifier: GPL-3.0-or-later
#include "target.h"

#include "journal/settings/settings_json.h"

namespace piolo::fuzz {

void runSettings(std::string_view bytes) {
    journal::FirstFault first{{"settings.json", 0}, {}};
    auto settings = journal::settingsFromJson(bytes, first);
    hold(settings.device.empty() || Id::parse(settings.device), "a device is an id or nothing");
    hold(settings.offsetMillis >= -500 && settings.offsetMillis <= 1000, "an offset is in its range");
    if (settings.device.empty()) settings.device = Id{1, 1}.text();
    const auto text = journal::settingsToJson(settings);
    journal::FirstFault none{{"settings.json", 0}, {}};
    const auto again = journal::settingsFromJson(text, none);
    hold(!none.fault, "what was written is read without a fault");
    hold(journal::settingsToJson(again) == text, "what was read is written the same");
}

} // namespace piolo::fuzz
