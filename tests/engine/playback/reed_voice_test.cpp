// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/playback/reed_voice.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <complex>
#include <numbers>
#include <span>
#include <vector>

using namespace piolo::engine;

namespace {

std::vector<float> held(std::int32_t key, SampleRate rate, double seconds) {
    ReedVoice voice;
    voice.prepare(rate);
    std::vector<float> sound(static_cast<std::size_t>(seconds * rate.hertz));
    voice.begin({key, sound.size(), 0.5F});
    voice.add(sound);
    return sound;
}

/// The amplitude at `hertz`, by a plain sum with a Hann window.
std::complex<double> amountOf(double hertz, std::span<const float> sound, int rate, std::size_t from = 0) {
    std::complex<double> sum = 0;
    for (std::size_t i = 0; i < sound.size(); ++i) {
        const double window = 0.5 - 0.5 * std::cos(2 * std::numbers::pi * static_cast<double>(i) /
                                                   static_cast<double>(sound.size()));
        sum += window * static_cast<double>(sound[i]) *
               std::polar(1.0, -2 * std::numbers::pi * hertz * static_cast<double>(from + i) / rate);
    }
    return sum;
}

} // namespace

TEST_CASE("notes have the frequencies of equal temperament, and keep their phase") {
    struct Pitch {
        std::int32_t key;
        double hertz;
    };
    // f = 440·2^((n-69)/12), with notes numbered as in the MIDI Tuning Standard and A4 = 440 Hz (ISO 16), to
    // four decimal places; the standard's own examples are note 60 = 261.6256 Hz and note 69 = 440.0000 Hz
    // (midi.org).
    constexpr std::array pitches{Pitch{60, 261.6256}, Pitch{61, 277.1826}, Pitch{62, 293.6648},
                                 Pitch{63, 311.1270}, Pitch{64, 329.6276}, Pitch{65, 349.2282},
                                 Pitch{66, 369.9944}, Pitch{67, 391.9954}, Pitch{68, 415.3047},
                                 Pitch{69, 440.0000}, Pitch{70, 466.1638}, Pitch{71, 493.8833},
                                 Pitch{72, 523.2511}};
    for (const auto& [key, hertz] : pitches) {
        CAPTURE(key);
        const auto note = held(key, {48'000}, 2.2);
        // The drift of the tone's phase from that of the frequency between two moments 2 s apart.
        const auto early = amountOf(hertz, std::span(note).subspan(1'000, 4'800), 48'000, 1'000);
        const auto late = amountOf(hertz, std::span(note).subspan(97'000, 4'800), 48'000, 97'000);
        const double turns = std::arg(late / early) / (2 * std::numbers::pi);
        CHECK(std::abs(turns / 2.0) < 0.001);
    }
}

TEST_CASE("no harmonic is folded back, at any rate") {
    constexpr int harmonics = 12; // more than any note has
    for (const int rate : {8'000, 22'050, 48'000})
        for (const std::int32_t key : {55, 74, 86, 91, 99, 104}) {
            const double base = 440 * std::exp2((key - 69) / 12.0);
            const auto sound = held(key, {rate}, 1.0);
            const auto middle = std::span(sound).subspan(sound.size() / 4, sound.size() / 2);
            const double tone = std::abs(amountOf(base, middle, rate));
            for (int harmonic = 2; harmonic <= harmonics; ++harmonic) {
                const double folded = std::abs(std::remainder(harmonic * base, rate));
                const double nearest = std::abs(std::remainder(folded, base));
                if (harmonic * base < 0.5 * rate || nearest < 20) continue; // no alias, or too close to tell
                CAPTURE(rate);
                CAPTURE(key);
                CAPTURE(harmonic);
                CHECK(std::abs(amountOf(folded, middle, rate)) < 1e-3 * tone); // 60 dB below
            }
        }
}

TEST_CASE("a note above what the rate can hold is silent") {
    for (const float value : held(127, {8'000}, 0.1)) REQUIRE(value == 0.0F);
}

TEST_CASE("a note swells and fades: no step anywhere, and its last sample is silence") {
    ReedVoice voice;
    voice.prepare({48'000});
    std::vector<float> sound(9'600);
    voice.begin({69, 4'800, 1.0F});
    voice.add(sound);
    CHECK_FALSE(voice.sounds());
    CHECK(sound.front() != 0.0F);
    CHECK(std::abs(sound.front()) < 1e-4F);
    CHECK(sound[4'800 + 719] == 0.0F);
    float highest = 0;
    for (std::size_t i = 0; i < 240; ++i) highest = std::max(highest, std::abs(sound[i]));
    CHECK(highest < 0.3F); // after a third of the attack
    for (std::size_t i = 4'800 + 720; i < sound.size(); ++i) REQUIRE(sound[i] == 0.0F);
}

TEST_CASE("a held note's peak is its gain") {
    for (const std::int32_t key : {45, 69, 93}) {
        float highest = 0;
        for (const float value : held(key, {48'000}, 0.5)) highest = std::max(highest, std::abs(value));
        CHECK(highest == doctest::Approx(0.5F).epsilon(0.01));
    }
}
