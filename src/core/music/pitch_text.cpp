// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/pitch_text.h"

#include <algorithm>
#include <cstdlib>

namespace piolo {

namespace {

constexpr int mostAlter = 3;

} // namespace

std::string pitchText(WrittenPitch pitch) {
    const char sign = pitch.alter < 0 ? 'b' : '#';
    return pitch.step + std::string(static_cast<std::size_t>(std::abs(pitch.alter)), sign) +
           std::to_string(pitch.octave);
}

std::optional<WrittenPitch> pitchNamed(std::string_view text) {
    if (text.size() < 2 || text.front() < 'A' || text.front() > 'G') return std::nullopt;
    WrittenPitch pitch;
    pitch.step = text.front();
    const auto signs = text.substr(1, text.size() - 2);
    const char sign = signs.empty() ? '#' : signs.front();
    const bool signsFit = (sign == '#' || sign == 'b') && signs.size() <= mostAlter &&
                          std::all_of(signs.begin(), signs.end(), [&](char c) { return c == sign; });
    const char octave = text.back();
    if (!signsFit || octave < '0' || octave > '9') return std::nullopt;
    pitch.alter = static_cast<std::int8_t>(sign == '#' ? std::ssize(signs) : -std::ssize(signs));
    pitch.octave = static_cast<std::int8_t>(octave - '0');
    return pitch;
}

} // namespace piolo
