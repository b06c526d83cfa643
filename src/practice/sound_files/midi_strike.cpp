// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/sound_files/midi_strike.h"

namespace piolo::practice {

namespace {

constexpr std::uint8_t claves = 75;
constexpr std::uint8_t highBlock = 76;
constexpr std::uint8_t lowBlock = 77;

} // namespace

MidiStrike midiStrikeOf(engine::Layer layer) {
    using engine::Layer;
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
    case Layer::playback:
        break;
    }
    return {claves, 96};
}

} // namespace piolo::practice
