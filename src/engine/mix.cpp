// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/mix.h"

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

} // namespace piolo::engine
