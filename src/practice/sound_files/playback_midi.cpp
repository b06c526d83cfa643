// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/playback/playback_pulses.h"
#include "files/midi_file.h"
#include "practice/sound_files/midi_strike.h"
#include "practice/sound_files/playback_file.h"

#include <algorithm>
#include <numeric>

namespace piolo::practice {
namespace {

using engine::PlaybackMoment;

constexpr std::int64_t mostDivision = 32'767;
constexpr std::int64_t finestOfAll = 30'240; // 2^5·3^3·5·7
constexpr std::uint8_t plainVelocity = 80;
constexpr std::uint8_t accentVelocity = 104;

/// Ticks of the file, `division` of them per quarter.
class Ticks {
public:
    Ticks(Fraction beat, std::int64_t division) : beat_(ratio(beat, {1, 4})), division_(division) {}

    [[nodiscard]] bool holds(PlaybackMoment moment) const { return above(moment) % below(moment) == 0; }
    /// Rounded to the nearest.
    [[nodiscard]] std::uint64_t of(PlaybackMoment moment) const {
        return static_cast<std::uint64_t>((2 * above(moment) + below(moment)) / (2 * below(moment)));
    }
    [[nodiscard]] std::int32_t division() const { return static_cast<std::int32_t>(division_); }

private:
    using Wide = unsigned __int128;
    [[nodiscard]] Wide above(PlaybackMoment moment) const {
        return Wide{moment.count} * static_cast<unsigned>(beat_.numerator) *
               static_cast<std::uint64_t>(division_);
    }
    [[nodiscard]] Wide below(PlaybackMoment moment) const {
        return Wide{moment.perBeat} * static_cast<unsigned>(beat_.denominator);
    }

    Fraction beat_; // in quarters
    std::int64_t division_;
};

/// The parts per quarter needed to make every onset exact; the finest possible if that is too fine.
std::int64_t partsOf(const std::vector<PlaybackMoment>& onsets, Fraction beat) {
    std::int64_t parts = ratio(beat, {1, 4}).denominator;
    for (const PlaybackMoment& onset : onsets) {
        parts = std::lcm(parts, std::int64_t{onset.perBeat} * ratio(beat, {1, 4}).denominator);
        if (parts > mostDivision) return finestOfAll;
    }
    return mostDivision / parts * parts;
}

Ticks ticksFor(const std::vector<PlaybackMoment>& onsets, Fraction beat) {
    const Ticks usual(beat, files::ticksPerQuarter);
    if (std::ranges::all_of(onsets, [&](const PlaybackMoment& onset) { return usual.holds(onset); }))
        return usual;
    return {beat, partsOf(onsets, beat)};
}

struct Struck {
    PlaybackMoment at;
    MidiStrike strike;
};

std::vector<Struck> strikesOf(const engine::PlaybackScore& score) {
    std::vector<Struck> strikes;
    for (engine::PlaybackPulses pulses(score.plan, score.click); !pulses.atEnd(); pulses.advance())
        if (pulses.click().sounds)
            strikes.push_back({{pulses.tick(), static_cast<std::uint32_t>(pulses.perBeat())},
                               midiStrikeOf(pulses.click().layer)});
    return strikes;
}

std::vector<PlaybackMoment> onsetsOf(const engine::PlaybackScore& score, const std::vector<Struck>& strikes) {
    std::vector<PlaybackMoment> onsets;
    for (const auto& note : score.notes) onsets.push_back(note.onset);
    for (const Struck& struck : strikes) {
        const auto common = std::gcd(struck.at.count, std::uint64_t{struck.at.perBeat});
        onsets.push_back({struck.at.count / common, static_cast<std::uint32_t>(struck.at.perBeat / common)});
    }
    return onsets;
}

} // namespace

Done writePlaybackMidi(const std::string& path, const engine::PlaybackScore& score, const Meter& meter) {
    const Fraction beat = fractionOf(meter.beat());
    const auto strikes = strikesOf(score);
    const Ticks ticks = ticksFor(onsetsOf(score, strikes), beat);
    const engine::PlaybackPulses pulses(score.plan, score.click);
    files::MidiTrack midi;
    midi.numerator = meter.numerator();
    midi.denominator = meter.denominator();
    midi.beat = beat;
    midi.tempi = {{0, score.plan.standing.tempo}};
    midi.division = ticks.division();
    midi.length = ticks.of({pulses.end(), static_cast<std::uint32_t>(pulses.perBeat())});
    for (const Struck& struck : strikes)
        midi.clicks.push_back({ticks.of(struck.at), struck.strike.key, struck.strike.velocity});
    for (const auto& note : score.notes) {
        const auto onset = ticks.of(note.onset);
        midi.notes.push_back({onset, std::max(ticks.of(note.end), onset + 1), note.key,
                              note.accent ? accentVelocity : plainVelocity});
    }
    return files::writeMidi(path, midi);
}

} // namespace piolo::practice
