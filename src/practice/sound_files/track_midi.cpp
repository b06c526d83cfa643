// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/midi_file.h"
#include "practice/sound_files/midi_strike.h"
#include "practice/sound_files/track_file.h"

namespace piolo::practice {
namespace {

/// The beats of the file: their number of ticks and the positions of their pulses.
struct MidiBeat {
    std::int32_t division;
    std::uint64_t ticks;
    std::vector<std::uint64_t> at;
    bool exact = true; ///< every pulse falls on a tick
};

MidiBeat beatOf(const engine::ClickTrack& track, std::int32_t division) {
    const Fraction quarters = ratio(fractionOf(track.meter.beat()), {1, 4});
    const auto parts = engine::partsOf(track);
    MidiBeat beat{division,
                  static_cast<std::uint64_t>(division) * static_cast<std::uint64_t>(quarters.numerator) /
                      static_cast<std::uint64_t>(quarters.denominator),
                  {}};
    for (std::int32_t part = 0; part < parts.count; ++part) {
        const auto scaled = parts.at.at(static_cast<std::size_t>(part)) * beat.ticks;
        beat.exact = beat.exact && scaled % parts.perBeat == 0;
        beat.at.push_back(scaled / parts.perBeat);
    }
    return beat;
}

/// The usual division or, if a swing does not fit it, one that fits: pairs are quarters or eighths, and a
/// multiple of twice the sum of the ratio divides both.
MidiBeat beatOf(const engine::ClickTrack& track) {
    auto usual = beatOf(track, files::ticksPerQuarter);
    if (usual.exact) return usual;
    const Fraction swing = track.click.swing.reduced();
    return beatOf(track, 96 * (swing.numerator + swing.denominator));
}

// The tick at which each stretch begins, and finally the one at which everything ends.
std::vector<std::uint64_t> beginnings(const engine::ClickTrack& track, std::uint64_t perBeat) {
    std::vector<std::uint64_t> ticks{0};
    for (const auto& stretch : track.stretches)
        ticks.push_back(ticks.back() + perBeat * static_cast<std::uint64_t>(beatsOf(track, stretch)));
    return ticks;
}

void addTempi(files::MidiTrack& midi, const engine::ClickTrack& track,
              const std::vector<std::uint64_t>& begins) {
    for (std::size_t i = 0; i < track.stretches.size(); ++i) {
        const Tempo tempo = track.stretches[i].tempo;
        if (midi.tempi.empty() || midi.tempi.back().tempo != tempo) midi.tempi.push_back({begins[i], tempo});
    }
}

} // namespace

Done writeTrackMidi(const std::string& path, const engine::ClickTrack& track, engine::SampleRate rate) {
    const MidiBeat beat = beatOf(track);
    const auto begins = beginnings(track, beat.ticks);
    files::MidiTrack midi{track.meter.numerator(),
                          track.meter.denominator(),
                          fractionOf(track.meter.beat()),
                          {},
                          {},
                          begins.back(),
                          beat.division};
    addTempi(midi, track, begins);
    for (const auto& pulse : engine::pulsesOf(track, rate)) {
        if (!pulse.sounds) continue;
        const MidiStrike strike = midiStrikeOf(pulse.layer);
        const std::uint64_t tick = begins[pulse.stretch] +
                                   static_cast<std::uint64_t>(pulse.beat) * beat.ticks +
                                   beat.at[static_cast<std::size_t>(pulse.part)];
        midi.clicks.push_back({tick, strike.key, strike.velocity});
    }
    return files::writeMidi(path, midi);
}

} // namespace piolo::practice
