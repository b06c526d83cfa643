// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/playback/reed_voice.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace piolo::engine {

namespace {

constexpr int waveBits = 12;
constexpr std::size_t waveLength = std::size_t{1} << waveBits;
constexpr double edgeSeconds = 0.015;
constexpr double highest = 0.45; // of the sample rate

// Odd harmonics are stronger than the even ones next to them, as in the tone of a reed, and all become weaker
// upwards.
constexpr std::array harmonicGains{1.0, 0.42, 0.58, 0.24, 0.30, 0.13, 0.15, 0.07, 0.07, 0.04};

double hertzOf(std::int32_t key) { return 440.0 * std::exp2((key - 69) / 12.0); }

/// One period with a peak of 1, plus its first sample again at the end for interpolation.
using Wave = std::array<float, waveLength + 1>;

Wave waveOf(std::span<const double> turn) {
    double peak = 0.0;
    for (const double value : turn) peak = std::max(peak, std::abs(value));
    Wave wave{};
    for (std::size_t i = 0; i < turn.size(); ++i) wave[i] = static_cast<float>(turn[i] / peak);
    wave.back() = wave.front();
    return wave;
}

/// By number of harmonics, from 1. Each is the previous one plus one harmonic.
std::vector<Wave> madeWaves() {
    std::vector<Wave> waves;
    std::vector<double> turn(waveLength);
    for (std::size_t h = 0; h < harmonicGains.size(); ++h) {
        for (std::size_t i = 0; i < waveLength; ++i) {
            const double phase = 2.0 * std::numbers::pi * static_cast<double>(i) / waveLength;
            turn[i] += harmonicGains[h] * std::sin(static_cast<double>(h + 1) * phase);
        }
        waves.push_back(waveOf(turn));
    }
    return waves;
}

/// The same at every rate: made once, for all voices.
const std::vector<Wave>& waves() {
    static const std::vector<Wave> made = madeWaves();
    return made;
}

float read(const float* wave, std::uint64_t phase) noexcept {
    const auto place = static_cast<std::size_t>(phase >> (64 - waveBits));
    constexpr float scale = 1.0F / 16'777'216.0F; // 24 bits for the interpolation between two samples
    const float between = static_cast<float>(phase << waveBits >> 40U) * scale;
    return wave[place] + between * (wave[place + 1] - wave[place]);
}

} // namespace

void ReedVoice::prepare(SampleRate rate) {
    count_ = 0;
    for (std::int32_t key = 0; key < keys; ++key) {
        const double hertz = hertzOf(key);
        const double fitting = std::floor(highest * rate.hertz / hertz);
        const auto harmonics = static_cast<std::size_t>(std::min(fitting, double{harmonicGains.size()}));
        pitches_[static_cast<std::size_t>(key)] =
            harmonics == 0 ? Pitch{}
                           : Pitch{waves()[harmonics - 1].data(),
                                   static_cast<std::uint64_t>(std::ldexp(hertz / rate.hertz, 64))};
    }
    const auto length = static_cast<std::size_t>(edgeSeconds * rate.hertz);
    edge_.resize(length + 1);
    for (std::size_t i = 0; i <= length; ++i)
        edge_[i] = static_cast<float>(
            0.5 * (1.0 - std::cos(std::numbers::pi * static_cast<double>(i) / static_cast<double>(length))));
}

void ReedVoice::begin(const ReedNote& note) noexcept {
    const auto key = static_cast<std::size_t>(std::clamp(note.key, 0, keys - 1));
    const Pitch& pitch = pitches_[key];
    if (!(note.gain > 0.0F) || pitch.wave == nullptr || count_ == mostSounding) return;
    sounding_[count_++] = {pitch, 0, note.gate, note.gain};
}

void ReedVoice::release() noexcept {
    for (auto& note : std::span(sounding_).first(count_)) note.gate = std::min(note.gate, note.at);
}

/// The first sample already sounds.
float ReedVoice::envelope(const Sounding& note) const noexcept {
    const auto rise = edge_[static_cast<std::size_t>(std::min(note.at + 1, fade()))];
    if (note.at < note.gate) return rise;
    return rise * edge_[static_cast<std::size_t>(fade() - 1 - (note.at - note.gate))];
}

void ReedVoice::addNote(std::span<float> out, Sounding& note) const noexcept {
    for (auto& sample : out) {
        if (isOver(note)) return;
        sample += note.gain * envelope(note) * read(note.pitch.wave, (note.at + 1) * note.pitch.step);
        ++note.at;
    }
}

void ReedVoice::add(std::span<float> out) noexcept {
    const auto sounding = std::span(sounding_).first(count_);
    for (auto& note : sounding) addNote(out, note);
    const auto kept = std::remove_if(sounding.begin(), sounding.end(),
                                     [this](const Sounding& note) { return isOver(note); });
    count_ = static_cast<std::size_t>(kept - sounding.begin());
}

} // namespace piolo::engine
