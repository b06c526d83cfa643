// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/instrument.h"

#include "core/music/key_signature.h"
#include "core/music/spelling.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace piolo {

namespace {

using enum Clef;
using enum InstrumentFamily;

constexpr NoteRange saxophone{{'B', -1, 3}, {'F', 0, 6}};
constexpr NoteRange clarinet{{'E', 0, 3}, {'G', 0, 6}};

constexpr std::array<Instrument, 22> all{{
    {"piccolo", flutes, treble, {12, 7}, {{'D', 0, 4}, {'C', 0, 7}}},
    {"flute", flutes, treble, {0, 0}, {{'C', 0, 4}, {'C', 0, 7}}},
    {"oboe", doubleReeds, treble, {0, 0}, {{'B', -1, 3}, {'G', 0, 6}}},
    {"English horn", doubleReeds, treble, {-7, -4}, {{'B', 0, 3}, {'G', 0, 6}}},
    {"clarinet in E flat", clarinets, treble, {3, 2}, clarinet},
    {"clarinet in B flat", clarinets, treble, {-2, -1}, clarinet},
    {"clarinet in A", clarinets, treble, {-3, -2}, clarinet},
    {"bass clarinet", clarinets, treble, {-14, -8}, {{'E', -1, 3}, {'G', 0, 6}}},
    {"bassoon", doubleReeds, bass, {0, 0}, {{'B', -1, 1}, {'C', 0, 5}}},
    {"soprano saxophone", saxophones, treble, {-2, -1}, saxophone},
    {"alto saxophone", saxophones, treble, {-9, -5}, saxophone},
    {"tenor saxophone", saxophones, treble, {-14, -8}, saxophone},
    {"baritone saxophone", saxophones, treble, {-21, -12}, saxophone},
    {"trumpet in B flat", highBrass, treble, {-2, -1}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"trumpet in C", highBrass, treble, {0, 0}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"cornet", highBrass, treble, {-2, -1}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"flugelhorn", highBrass, treble, {-2, -1}, {{'F', 1, 3}, {'B', -1, 5}}},
    {"horn in F", highBrass, treble, {-7, -4}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"trombone", lowBrass, bass, {0, 0}, {{'E', 0, 2}, {'B', -1, 4}}},
    {"euphonium", lowBrass, bass, {0, 0}, {{'E', 0, 2}, {'B', -1, 4}}},
    {"euphonium in treble clef", lowBrass, treble, {-14, -8}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"tuba", lowBrass, bass, {0, 0}, {{'E', 0, 1}, {'F', 0, 4}}},
}};

Tonic tonicOf(WrittenPitch pitch) noexcept { return {pitch.step, pitch.alter}; }

/// A number higher than any real key's if the scale cannot be written in a key.
int signsOf(WrittenPitch tonic, ScaleKind kind) noexcept {
    constexpr int tooMany = 100;
    if (std::abs(tonic.alter) > 1) return tooMany;
    const auto fifths = fifthsOf(tonicOf(tonic), kind);
    return fifths ? std::abs(*fifths) : tooMany;
}

} // namespace

std::span<const Instrument> instruments() noexcept { return all; }

const Instrument* instrumentNamed(std::string_view name) noexcept {
    const auto* const found = std::ranges::find(all, name, &Instrument::name);
    return found == all.end() ? nullptr : found;
}

Tonic concertOf(Tonic written, ScaleKind kind, Transposition transposition) noexcept {
    const WrittenPitch from{written.step, written.alter, 4};
    const WrittenPitch to =
        spelledAt(lettersAboveC(from) + transposition.letters, midiNumber(from) + transposition.semitones);
    const WrittenPitch next = byNextLetter(to);
    return signsOf(next, kind) < signsOf(to, kind) ? tonicOf(next) : tonicOf(to);
}

} // namespace piolo
