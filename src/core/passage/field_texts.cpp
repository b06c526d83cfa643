// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/field_texts.h"

namespace piolo {

std::string FieldTexts::textOf(const std::vector<Accent>& accents, Most /*most*/) {
    std::string text;
    for (const Accent accent : accents) text.append(text.empty() ? "" : " ").append(nameOf(accent));
    return text;
}

std::string FieldTexts::textOf(const std::vector<BreathPlace>& breaths, Most /*most*/) {
    std::string text;
    for (const auto& [bar, beat, beats] : breaths) {
        if (!text.empty()) text += ", ";
        text += "bar " + std::to_string(bar) + " beat " + std::to_string(beat) + " waits " +
                std::to_string(beats);
    }
    return text;
}

} // namespace piolo
