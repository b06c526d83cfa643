// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale.h"

namespace piolo {

namespace {

constexpr std::array<std::string_view, 7> noteNames{"quarters",    "eighths",    "triplets",  "sixteenths",
                                                    "quintuplets", "sextuplets", "septuplets"};

} // namespace

std::string_view nameOf(ScaleKind kind) noexcept { return valueName(kind); }
std::string_view nameOf(ScaleRange range) noexcept { return valueName(range); }
std::string_view nameOf(ScalePattern pattern) noexcept { return valueName(pattern); }

std::optional<ScaleKind> scaleKindNamed(std::string_view name) noexcept {
    // Two modes are known by the names of scales that are taught before them.
    if (name == "ionian") return ScaleKind::major;
    if (name == "aeolian") return ScaleKind::naturalMinor;
    return valueNamed<ScaleKind>(name);
}

std::optional<ScaleRange> scaleRangeNamed(std::string_view name) noexcept {
    return valueNamed<ScaleRange>(name);
}

std::optional<ScalePattern> scalePatternNamed(std::string_view name) noexcept {
    return valueNamed<ScalePattern>(name);
}

std::string_view notesName(std::int32_t notesPerBeat) noexcept {
    const auto place = static_cast<std::size_t>(notesPerBeat - 1);
    return place < noteNames.size() ? noteNames[place] : std::string_view{};
}

std::string textOf(const Scale& scale) {
    std::string text = spoken(scale.tonic);
    text.append(" ").append(nameOf(scale.kind));
    if (scale.pattern != ScalePattern::inOrder) text.append(" ").append(nameOf(scale.pattern));
    text.append(", ").append(nameOf(scale.range));
    return text.append(", ").append(notesName(scale.notesPerBeat));
}

} // namespace piolo
