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

constexpr NoteRange saxophone{{'B', -1, 3}, {'F', 0, 6}};
constexpr NoteRange clarinet{{'E', 0, 3}, {'G', 0, 6}};

constexpr std::array<Instrument, 22> all{{
    {"piccolo", treble, {12, 7}, {{'D', 0, 4}, {'C', 0, 7}}},
    {"flute", treble, {0, 0}, {{'C', 0, 4}, {'C', 0, 7}}},
    {"oboe", treble, {0, 0}, {{'B', -1, 3}, {'G', 0, 6}}},
    {"English horn", treble, {-7, -4}, {{'B', 0, 3}, {'G', 0, 6}}},
    {"clarinet in E flat", treble, {3, 2}, clarinet},
    {"clarinet in B flat", treble, {-2, -1}, clarinet},
    {"clarinet in A", treble, {-3, -2}, clarinet},
    {"bass clarinet", treble, {-14, -8}, {{'E', -1, 3}, {'G', 0, 6}}},
    {"bassoon", bass, {0, 0}, {{'B', -1, 1}, {'C', 0, 5}}},
    {"soprano saxophone", treble, {-2, -1}, saxophone},
    {"alto saxophone", treble, {-9, -5}, saxophone},
    {"tenor saxophone", treble, {-14, -8}, saxophone},
    {"baritone saxophone", treble, {-21, -12}, saxophone},
    {"trumpet in B flat", treble, {-2, -1}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"trumpet in C", treble, {0, 0}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"cornet", treble, {-2, -1}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"flugelhorn", treble, {-2, -1}, {{'F', 1, 3}, {'B', -1, 5}}},
    {"horn in F", treble, {-7, -4}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"trombone", bass, {0, 0}, {{'E', 0, 2}, {'B', -1, 4}}},
    {"euphonium", bass, {0, 0}, {{'E', 0, 2}, {'B', -1, 4}}},
    {"euphonium in treble clef", treble, {-14, -8}, {{'F', 1, 3}, {'C', 0, 6}}},
    {"tuba", bass, {0, 0}, {{'E', 0, 1}, {'F', 0, 4}}},
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
