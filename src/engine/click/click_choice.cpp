// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/click_choice.h"

#include "engine/time/chance.h"

#include <algorithm>

namespace piolo::engine {

namespace {

constexpr std::uint64_t saltOfBars = 1;
constexpr std::uint64_t saltOfBeats = 2;

Layer layerOf(Accent accent) noexcept {
    switch (accent) {
    case Accent::strong:
        return Layer::downbeat;
    case Accent::group:
        return Layer::group;
    case Accent::plain:
    case Accent::silent:
        break;
    }
    return Layer::beat;
}

} // namespace

ClickChoice ClickChoice::of(const ClickPattern& pattern, BeatUnit beat) noexcept {
    ClickChoice choice;
    choice.on = pattern.on;
    choice.offbeat = pulsesToTheBeat(pattern, beat, 2) - 1;
    const auto accented = std::min(pattern.accents.size(), choice.accents.size());
    std::copy_n(pattern.accents.begin(), accented, choice.accents.begin());
    choice.accented = static_cast<std::int32_t>(accented);
    choice.barsOn = pattern.barsOn;
    choice.barsOff = pattern.barsOff;
    choice.silentBars = pattern.silentBars;
    choice.leftOutBeats = pattern.leftOutBeats;
    choice.seed = pattern.seed;
    return choice.inRange();
}

ClickChoice ClickChoice::inRange() const noexcept {
    ClickChoice choice = *this;
    choice.accented = std::clamp(accented, 0, static_cast<std::int32_t>(accents.size()));
    choice.barsOn = std::clamp(barsOn, 1, ClickPattern::mostBarsInTurn);
    choice.barsOff = std::clamp(barsOff, 0, ClickPattern::mostBarsInTurn);
    return choice;
}

Click ClickChoice::at(std::uint64_t run, std::int64_t bar, std::int32_t beat, std::int32_t part,
                      std::uint32_t groupStarts) const noexcept {
    const auto accent = accentOf(beat, groupStarts);
    const bool sounds =
        isHere(beat, part) && accent != Accent::silent && barSounds(run, bar) && !isLeftOut(run, bar, beat);
    if (on == ClickOn::offbeats && part == offbeat)
        return {beat < accented ? layerOf(accent) : Layer::beat, sounds};
    return {part == 0 ? layerOf(accent) : Layer::subdivision, sounds};
}

Layer ClickChoice::landing() const noexcept {
    const auto accent = accentOf(0, 1);
    return accent == Accent::silent ? Layer::downbeat : layerOf(accent);
}

Accent ClickChoice::accentOf(std::int32_t beat, std::uint32_t groupStarts) const noexcept {
    return beat < accented ? accents[static_cast<std::size_t>(beat)] : usualAccent(beat, groupStarts);
}

bool ClickChoice::isHere(std::int32_t beat, std::int32_t part) const noexcept {
    switch (on) {
    case ClickOn::beats:
        return true;
    case ClickOn::downbeats:
        return beat == 0 && part == 0;
    case ClickOn::backbeats:
        return beat % 2 == 1 && part == 0;
    case ClickOn::offbeats:
        return part == offbeat;
    }
    return true;
}

/// A pick-up always sounds.
bool ClickChoice::barSounds(std::uint64_t run, std::int64_t bar) const noexcept {
    if (bar < 0) return true;
    const Chance chance{static_cast<std::uint64_t>(seed), saltOfBars};
    return bar % (std::int64_t{barsOn} + barsOff) < barsOn && !chance.hits(silentBars, run, bar, 0);
}

bool ClickChoice::isLeftOut(std::uint64_t run, std::int64_t bar, std::int32_t beat) const noexcept {
    const Chance chance{static_cast<std::uint64_t>(seed), saltOfBeats};
    return chance.hits(leftOutBeats, run, bar, beat);
}

} // namespace piolo::engine
