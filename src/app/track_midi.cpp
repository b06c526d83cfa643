// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/track_file.h"
#include "files/midi_file.h"

namespace piolo::app {
namespace {

using engine::Layer;

struct Strike {
    std::uint8_t key;
    std::uint8_t velocity;
};

// Keys of the percussion channel, common practice: 75 claves, 76 and 77 high and low wood block.
constexpr std::uint8_t claves = 75;
constexpr std::uint8_t highBlock = 76;
constexpr std::uint8_t lowBlock = 77;

Strike strikeOf(Layer layer) {
    switch (layer) {
    case Layer::downbeat:
        return {highBlock, 127};
    case Layer::group:
        return {highBlock, 96};
    case Layer::beat:
        return {lowBlock, 96};
    case Layer::subdivision:
        return {lowBlock, 56};
    case Layer::countIn:
    case Layer::cue:
        break;
    }
    return {claves, 96};
}

std::uint64_t ticksPerBeat(const Meter& meter) {
    const Fraction quarters = ratio(fractionOf(meter.beat()), {1, 4});
    return static_cast<std::uint64_t>(files::ticksPerQuarter) *
           static_cast<std::uint64_t>(quarters.numerator) / static_cast<std::uint64_t>(quarters.denominator);
}

// The tick on which each stretch begins, and last the one on which all ends.
std::vector<std::uint64_t> beginnings(const engine::ClickTrack& track, std::uint64_t perBeat) {
    std::vector<std::uint64_t> ticks{0};
    const std::uint64_t perBar = perBeat * static_cast<std::uint64_t>(track.meter.beatsPerBar());
    for (const auto& stretch : track.stretches)
        ticks.push_back(ticks.back() + perBar * static_cast<std::uint64_t>(stretch.bars));
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
    const std::uint64_t perBeat = ticksPerBeat(track.meter);
    const std::uint64_t perPart = perBeat / static_cast<std::uint64_t>(track.subdivision);
    const auto begins = beginnings(track, perBeat);
    files::MidiTrack midi{track.meter.numerator(),
                          track.meter.denominator(),
                          fractionOf(track.meter.beat()),
                          {},
                          {},
                          begins.back()};
    addTempi(midi, track, begins);
    for (const auto& pulse : engine::pulsesOf(track, rate)) {
        const Strike strike = strikeOf(pulse.layer);
        const std::uint64_t tick = begins[pulse.stretch] + static_cast<std::uint64_t>(pulse.beat) * perBeat +
                                   static_cast<std::uint64_t>(pulse.part) * perPart;
        midi.clicks.push_back({tick, strike.key, strike.velocity});
    }
    return files::writeMidi(path, midi);
}

} // namespace piolo::app
