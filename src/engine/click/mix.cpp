// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/mix.h"

#include <algorithm>

namespace piolo::engine {

std::string_view nameOf(Voice voice) noexcept {
    switch (voice) {
    case Voice::impulse:
        return "impulse";
    case Voice::wood:
        return "wood";
    case Voice::metal:
        return "metal";
    case Voice::reed:
        return "reed";
    case Voice::dry:
        return "dry";
    }
    return "";
}

std::optional<Voice> voiceNamed(std::string_view name) noexcept {
    for (const auto voice : voices)
        if (nameOf(voice) == name) return voice;
    return std::nullopt;
}

float Mix::gainOf(Layer layer) const noexcept {
    const auto index = static_cast<std::size_t>(layer);
    if (muted[index]) return 0.0F;
    return std::clamp(level, 0.0F, 1.0F) * std::clamp(layerLevel[index], 0.0F, 1.0F);
}

} // namespace piolo::engine
