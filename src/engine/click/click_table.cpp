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

struct Partial {
    double ratio;
    double gain;
};

struct Recipe {
    double beatHertz;    // the pitch of a beat; the other strokes are multiples of it
    double decaySeconds; // time to decay to 1/e
    double lengthSeconds;
    std::span<const Partial> partials;
};

struct Accent {
    double pitch;
    double peak;
};

// Far enough apart that a saxophone's line never masks all of them (docs/sound.md has the measurement).
constexpr std::array woodPartials{Partial{1.0, 1.0}, Partial{1.95, 0.35}, Partial{2.45, 0.6}};
constexpr std::array metalPartials{Partial{1.0, 1.0}, Partial{1.5037, 0.8}, Partial{1.78, 0.4},
                                   Partial{2.31, 0.35}};
constexpr std::array reedPartials{Partial{1.0, 1.0}, Partial{2.0, 0.75}, Partial{3.0, 0.55},
                                  Partial{4.0, 0.3}};
// Neighbouring partials that start in phase and drift apart within a millisecond: a tick with hardly any
// pitch. It ends before they are in phase again, which would sound like a second tick.
constexpr std::array dryPartials{Partial{1.0, 1.0}, Partial{1.31, 0.75}, Partial{1.46, 0.8},
                                 Partial{1.6, 0.55}};

constexpr Recipe recipeOf(Voice voice) {
    switch (voice) {
    case Voice::metal:
        return {1500.0, 0.011, 0.055, metalPartials};
    case Voice::reed:
        return {1050.0, 0.010, 0.045, reedPartials};
    case Voice::dry:
        return {2200.0, 0.003, 0.018, dryPartials};
    case Voice::wood:
    case Voice::impulse:
        break;
    }
    return {1350.0, 0.0085, 0.045, woodPartials};
}

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

/// Adds one tone to `table` starting at `from`, scaled to the peak `peak`.
void addTone(std::vector<float>& table, SampleRate rate, std::size_t from, const Recipe& recipe,
             Accent accent) {
    const double hertz = std::min(recipe.beatHertz * accent.pitch, 0.42 * rate.hertz);
    const auto count = static_cast<std::size_t>(recipe.lengthSeconds * rate.hertz);
    std::vector<double> tone(count);
    double highest = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        const double at = static_cast<double>(i + 1) / rate.hertz; // the first sample already sounds
        tone[i] = partialsAt(at, hertz, recipe.partials, 0.45 * rate.hertz) *
                  std::exp(-at / recipe.decaySeconds) * edges(at, 0.0006, recipe.lengthSeconds);
        highest = std::max(highest, std::abs(tone[i]));
    }
    table.resize(std::max(table.size(), from + count), 0.0F);
    for (std::size_t i = 0; i < count; ++i)
        table[from + i] += static_cast<float>(tone[i] * accent.peak / highest);
}

} // namespace

std::vector<float> clickTable(Voice voice, Stroke stroke, SampleRate rate) {
    if (voice == Voice::impulse) return {impulseOf(stroke)};
    std::vector<float> table;
    addTone(table, rate, 0, recipeOf(voice), accentOf(stroke));
    return table;
}

std::vector<float> cueTable(Cue cue, SampleRate rate) {
    static constexpr std::array soft{Partial{1.0, 1.0}, Partial{2.0, 0.25}};
    static constexpr Recipe note{1046.5, 0.045, 0.120, soft};
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
    }
    return table;
}

} // namespace piolo::engine
