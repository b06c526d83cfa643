// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/click_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <span>

namespace piolo::engine {

namespace {

struct Accent {
    double pitch;
    double peak;
};

constexpr Accent accentOf(Stroke stroke) {
    switch (stroke) {
    case Stroke::downbeat:
        return {1.50, 0.90};
    case Stroke::group:
        return {1.22, 0.76};
    case Stroke::subdivision:
        return {0.81, 0.36};
    case Stroke::countIn:
        return {0.66, 0.50};
    case Stroke::countInBar:
        return {0.73, 0.60};
    case Stroke::beat:
        break;
    }
    return {1.0, 0.66};
}

constexpr float impulseOf(Stroke stroke) {
    if (stroke == Stroke::downbeat || stroke == Stroke::countInBar) return 1.0F;
    return stroke == Stroke::subdivision ? 0.5F : 0.75F;
}

/// Rises from 0 during `attack` and falls to 0 at the end, both along half a cosine.
double edges(double at, double attack, double length) {
    const double up = std::min(1.0, at / attack);
    const double down = std::min(1.0, (length - at) / (0.3 * length));
    return 0.25 * (1.0 - std::cos(std::numbers::pi * up)) * (1.0 - std::cos(std::numbers::pi * down));
}

double partialsAt(double at, double hertz, std::span<const Partial> partials, double highest) {
    double sum = 0.0;
    for (const auto& partial : partials)
        if (partial.ratio * hertz < highest)
            sum += partial.gain * std::sin(2.0 * std::numbers::pi * partial.ratio * hertz * at);
    return sum;
}

constexpr double strikeSeconds = 0.0006;
constexpr double swellSeconds = 0.025;

/// Adds one tone to `table` starting at `from`, scaled to the peak `peak`.
void addTone(std::vector<float>& table, SampleRate rate, std::size_t from, const Recipe& recipe,
             Accent accent, double attackSeconds = strikeSeconds) {
    const double hertz = std::min(recipe.beatHertz * accent.pitch, 0.42 * rate.hertz);
    const auto count = static_cast<std::size_t>(recipe.lengthSeconds * rate.hertz);
    std::vector<double> tone(count);
    double highest = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        const double at = static_cast<double>(i + 1) / rate.hertz; // the first sample already sounds
        tone[i] = partialsAt(at, hertz, recipe.partials, 0.45 * rate.hertz) *
                  std::exp(-at / recipe.decaySeconds) * edges(at, attackSeconds, recipe.lengthSeconds);
        highest = std::max(highest, std::abs(tone[i]));
    }
    table.resize(std::max(table.size(), from + count), 0.0F);
    for (std::size_t i = 0; i < count; ++i)
        table[from + i] += static_cast<float>(tone[i] * accent.peak / highest);
}

} // namespace

std::vector<float> clickTable(Voice voice, Stroke stroke, SampleRate rate) {
    if (isForMeasurement(voice)) return {impulseOf(stroke)};
    std::vector<float> table;
    addTone(table, rate, 0, infoOf(voice).recipe, accentOf(stroke));
    return table;
}

std::vector<float> cueTable(Cue cue, SampleRate rate) {
    static constexpr std::array soft{Partial{1.0, 1.0}, Partial{2.0, 0.25}};
    static constexpr Recipe note{1046.5, 0.045, 0.120, soft};
    // Far below every click and cue, and without their stroke: it swells.
    static constexpr std::array round{Partial{1.0, 1.0}, Partial{2.0, 0.35}, Partial{3.0, 0.15}};
    static constexpr Recipe call{392.0, 0.2, 0.2, round};
    static constexpr double fourth = 4.0 / 3.0;
    const auto step = static_cast<std::size_t>(rate.hertz / 8);
    const auto third = static_cast<std::size_t>(rate.hertz / 12);
    std::vector<float> table;
    switch (cue) {
    case Cue::rise:
        addTone(table, rate, 0, note, {1.0, 0.5});
        addTone(table, rate, step, note, {fourth, 0.5});
        break;
    case Cue::fall:
        addTone(table, rate, 0, note, {fourth, 0.5});
        addTone(table, rate, step, note, {1.0, 0.5});
        break;
    case Cue::lastOfStreak:
        for (std::size_t i = 0; i < 3; ++i) addTone(table, rate, i * third, note, {1.5, 0.35});
        break;
    case Cue::turn:
        addTone(table, rate, 0, call, {1.0, 0.5}, swellSeconds);
        break;
    }
    return table;
}

} // namespace piolo::engine
