// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/pattern_options.h"

#include "core/base/digits.h"

#include <algorithm>
#include <optional>
#include <string_view>
#include <vector>

namespace piolo::command {
namespace {

std::vector<std::string_view> partsOf(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    for (std::size_t at = 0; at != std::string_view::npos;) {
        at = text.find(separator);
        parts.push_back(text.substr(0, at));
        if (at != std::string_view::npos) text.remove_prefix(at + 1);
    }
    return parts;
}

ClickOn readClickOn(OptionReader& in, const Meter& meter) {
    const auto on =
        static_cast<ClickOn>(in.choice("--click", {nameOf(ClickOn::beats), nameOf(ClickOn::downbeats),
                                                   nameOf(ClickOn::backbeats), nameOf(ClickOn::offbeats)}));
    if (on == ClickOn::backbeats && meter.beatsPerBar() == 1)
        in.fail({FaultNumber::noBackbeat, {}, {}}, "--click");
    return on;
}

std::vector<Accent> readAccents(OptionReader& in, const Meter& meter) {
    const std::string text = in.text("--accents", "");
    std::vector<Accent> accents;
    if (text.empty()) return accents;
    for (const auto word : partsOf(text, ','))
        if (const auto accent = accentNamed(word)) accents.push_back(*accent);
    const auto beats = static_cast<std::size_t>(meter.beatsPerBar());
    if (accents.size() != beats || partsOf(text, ',').size() != beats)
        in.fail({FaultNumber::badAccents, {}, {text, std::to_string(beats)}}, "--accents");
    return accents;
}

/// Swing applies to eighths or sixteenths, depending on how the beat is divided.
void readSwing(OptionReader& in, const ClickOptions& click, ClickPattern& pattern) {
    const std::string text = in.text("--swing", "1:1");
    const auto swing = parseSwing(text);
    if (!swing) {
        in.fail({FaultNumber::badSwing, {}, {text}}, "--swing");
        return;
    }
    pattern.swing = *swing;
    const auto beat = click.meter.beat();
    const auto pulses = pulsesToTheBeat(pattern, beat, click.subdivision);
    if (swing->reduced() == Fraction{1, 1} || swingOf(pattern, beat, pulses) == swing->reduced()) return;
    pattern.swung = SwungNotes::sixteenths;
    if (swingOf(pattern, beat, pulses) != swing->reduced())
        in.fail({FaultNumber::swingNeedsPairs, {}, {}}, "--swing");
}

void readSilence(OptionReader& in, ClickPattern& pattern) {
    const auto whole = [&in](std::string_view option, WholeRange range, std::optional<std::int64_t> usual) {
        return static_cast<std::int32_t>(in.whole(option, range, usual));
    };
    pattern.barsOn = whole("--bars-on", {1, ClickPattern::mostBarsInTurn}, 1);
    // The number of bars that click means nothing without the number of those that do not.
    const auto none = in.isGiven("--bars-on") ? std::nullopt : std::optional<std::int64_t>(0);
    pattern.barsOff = whole("--bars-off", {0, ClickPattern::mostBarsInTurn}, none);
    pattern.silentBars = whole("--silent-bars", {0, 100}, 0);
    pattern.leftOutBeats = whole("--left-out", {0, 100}, 0);
    pattern.seed = whole("--seed", {0, ClickPattern::mostSeed}, pattern.seed);
}

std::optional<BreathPlace> breathOf(std::string_view text) {
    const auto parts = partsOf(text, ':');
    if (parts.size() != 3) return std::nullopt;
    const auto number = [&](std::size_t part, std::size_t most) {
        return static_cast<std::int32_t>(digitsOf(parts[part], 1, most).value_or(-2));
    };
    const BreathPlace place{number(0, 5), number(1, 2), number(2, 1)};
    return isInRange(place) ? std::optional(place) : std::nullopt;
}

std::vector<BreathPlace> readBreaths(OptionReader& in, const Meter& meter, std::int64_t bars) {
    const std::string text = in.text("--breath", "");
    std::vector<BreathPlace> breaths;
    if (text.empty()) return breaths;
    bool good = true;
    for (const auto part : partsOf(text, ',')) {
        const auto place = breathOf(part);
        good = good && place && place->bar >= 1 && place->bar <= bars && place->beat <= meter.beatsPerBar() &&
               (place->bar > 1 || place->beat > 1);
        if (place) breaths.push_back(*place);
    }
    if (!good || !areBreaths(breaths))
        in.fail(
            {FaultNumber::badBreath, {}, {text, std::to_string(bars), std::to_string(meter.beatsPerBar())}},
            "--breath");
    return breaths;
}

} // namespace

OptionSpecs patternSpecs() {
    return {
        {"--click", "WORD", "beats", "beats, downbeats, backbeats (2 and 4) or offbeats (default beats)",
         "Where and how it clicks; the count-in always clicks its beats:"},
        {"--accents", "A,B...", "strong,plain", "strong, group, plain or silent for each beat of the bar"},
        {"--swing", "L:S", "2:1",
         "long to short in each pair of eighths or sixteenths, 1:1 to 3:1 (default 1:1)"},
        {"--bars-on", "N", "3", "this many bars click, 1 to 99 ..."},
        {"--bars-off", "N", "1", "... and then this many are silent, 0 to 99, in turn"},
        {"--silent-bars", "N", "25", "this many bars in a hundred are silent, at random"},
        {"--left-out", "N", "10", "this many beats in a hundred are left out, at random"},
        {"--seed", "N", "7", "another number chooses other bars and beats (default 1)"},
        {"--breath", "LIST", "4:3:1",
         "BAR:BEAT:BEATS,...: before that beat, the click waits this many beats"},
        {"--breath-below", "N", "84", "waits only at tempi below this one (default 400)"},
    };
}

ClickPattern readClickPattern(OptionReader& in, const ClickOptions& click, std::int64_t bars) {
    ClickPattern pattern;
    pattern.on = readClickOn(in, click.meter);
    pattern.accents = readAccents(in, click.meter);
    readSwing(in, click, pattern);
    readSilence(in, pattern);
    pattern.breaths = readBreaths(in, click.meter, bars);
    pattern.breathBelow = in.tempo("--breath-below", pattern.breathBelow);
    return pattern;
}

} // namespace piolo::command
