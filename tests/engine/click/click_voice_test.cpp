// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/click_voice.h"

#include "engine/click/click_track.h"
#include "spectrum.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <vector>

using namespace piolo;
using namespace piolo::engine;

namespace {

/// All except those for measurement.
const std::vector<Voice> sounding = [] {
    std::vector<Voice> list;
    std::ranges::remove_copy_if(voices, std::back_inserter(list), isForMeasurement);
    return list;
}();
constexpr std::array layers{Layer::downbeat, Layer::group, Layer::beat, Layer::subdivision, Layer::countIn};

Mix mixOf(Voice voice, float level = 1.0F) {
    Mix mix;
    mix.voice = voice;
    mix.level = level;
    return mix;
}

/// 100 ms of the bank with one click.
std::vector<float> click(Voice voice, Layer layer, int rate, bool barBegins = false) {
    ClickBank bank;
    bank.prepare({rate});
    bank.strike(mixOf(voice), layer, 0, barBegins);
    std::vector<float> out(static_cast<std::size_t>(rate / 10));
    bank.mix(out);
    return out;
}

std::vector<float> cueSound(Cue cue, int rate) {
    ClickBank bank;
    bank.prepare({rate});
    bank.cue(mixOf(Voice::wood), cue, 0);
    std::vector<float> out(static_cast<std::size_t>(rate / 2));
    bank.mix(out);
    return out;
}

float peakOf(std::span<const float> sound) {
    float peak = 0;
    for (const float value : sound) peak = std::max(peak, std::abs(value));
    return peak;
}

std::size_t lengthOf(const std::vector<float>& sound) {
    std::size_t length = 0;
    for (std::size_t i = 0; i < sound.size(); ++i)
        if (sound[i] != 0.0F) length = i + 1;
    return length;
}

} // namespace

TEST_CASE("every voice has a name, and every name a voice") {
    for (const auto voice : voices) CHECK(voiceNamed(nameOf(voice)) == voice);
    CHECK_FALSE(voiceNamed("gong").has_value());
    CHECK_FALSE(voiceNamed("").has_value());
}

TEST_CASE("a click is short, and silent at both ends") {
    for (const auto voice : sounding)
        for (const auto layer : layers)
            for (const int rate : {8'000, 44'100, 48'000, 192'000}) {
                CAPTURE(nameOf(voice));
                CAPTURE(rate);
                const auto sound = click(voice, layer, rate);
                const auto length = lengthOf(sound);
                CHECK(length > 0);
                CHECK(length <= static_cast<std::size_t>(rate * 60 / 1000));
                if (rate < 44'100) continue;
                // No discontinuity: neither the first nor the last sample exceeds a hundredth of the peak.
                CHECK(std::abs(sound[0]) < 0.01F * peakOf(sound));
                CHECK(std::abs(sound[length - 1]) < 0.01F * peakOf(sound));
            }
}

TEST_CASE("a click is audible within its first millisecond and near full strength within three") {
    for (const auto voice : sounding)
        for (const auto layer : layers) {
            CAPTURE(nameOf(voice));
            const auto sound = click(voice, layer, 48'000);
            const auto peak = peakOf(sound);
            CHECK(peakOf(std::span(sound).first(48)) > 0.25F * peak);
            CHECK(peakOf(std::span(sound).first(144)) > 0.8F * peak);
        }
}

TEST_CASE("the layers are told apart by pitch and by level in every voice") {
    for (const auto voice : sounding) {
        std::vector<double> pitches;
        std::vector<double> centroids;
        std::vector<float> peaks;
        for (const auto layer : layers) {
            const auto sound = click(voice, layer, 48'000);
            const auto spectrum = spectrumOf(sound, 48'000);
            pitches.push_back(spectrum.peakHertz);
            centroids.push_back(spectrum.centroidHertz);
            peaks.push_back(peakOf(sound));
        }
        for (std::size_t a = 0; a < layers.size(); ++a)
            for (std::size_t b = a + 1; b < layers.size(); ++b) {
                CAPTURE(nameOf(voice));
                CAPTURE(a);
                CAPTURE(b);
                // At least a whole tone (a ratio of 9:8) apart, and at least a tenth in the spectral
                // centroid.
                CHECK(std::max(pitches[a], pitches[b]) / std::min(pitches[a], pitches[b]) > 1.125);
                CHECK(std::max(centroids[a], centroids[b]) / std::min(centroids[a], centroids[b]) > 1.1);
                CHECK(std::max(peaks[a], peaks[b]) / std::min(peaks[a], peaks[b]) > 1.1F);
            }
        // The downbeat is the highest and the loudest.
        CHECK(pitches[0] == *std::max_element(pitches.begin(), pitches.end()));
        CHECK(peaks[0] == *std::max_element(peaks.begin(), peaks.end()));
    }
}

TEST_CASE("a bar of the count-in begins with a click of its own") {
    for (const auto voice : sounding)
        CHECK(peakOf(click(voice, Layer::countIn, 48'000, true)) >
              1.1F * peakOf(click(voice, Layer::countIn, 48'000)));
}

TEST_CASE("most of a click's energy is between 1 and 5 kHz") {
    for (const auto voice : sounding)
        for (const auto layer : {Layer::downbeat, Layer::group, Layer::beat}) {
            CAPTURE(nameOf(voice));
            CHECK(spectrumOf(click(voice, layer, 48'000), 48'000).shareInBand > 0.7);
        }
}

TEST_CASE("the voices sound different from one another") {
    for (std::size_t a = 0; a < sounding.size(); ++a)
        for (std::size_t b = a + 1; b < sounding.size(); ++b) {
            const auto one = click(sounding[a], Layer::beat, 48'000);
            const auto other = click(sounding[b], Layer::beat, 48'000);
            double product = 0;
            double first = 0;
            double second = 0;
            for (std::size_t i = 0; i < one.size(); ++i) {
                product += static_cast<double>(one[i]) * static_cast<double>(other[i]);
                first += static_cast<double>(one[i]) * static_cast<double>(one[i]);
                second += static_cast<double>(other[i]) * static_cast<double>(other[i]);
            }
            CHECK(std::abs(product) / std::sqrt(first * second) < 0.6);
        }
}

TEST_CASE("no voice exceeds full scale at 400 BPM with eight pulses per beat") {
    for (const auto voice : voices)
        for (const int rate : {8'000, 48'000}) {
            ClickTrack track;
            track.subdivision = 8;
            track.stretches = {{Tempo::bpm(400), 8, false}};
            track.mix = mixOf(voice);
            TrackPlayer player(track);
            player.prepare({rate}, 512);
            std::vector<float> out(player.length());
            player.render(out);
            CAPTURE(nameOf(voice));
            CHECK(peakOf(out) > 0.5F);
            CHECK(peakOf(out) <= 1.0F);
        }
}

TEST_CASE("sixty clicks at one sample do not pass full scale") {
    for (const auto voice : voices) {
        ClickBank bank;
        bank.prepare({48'000});
        for (int i = 0; i < 60; ++i) bank.strike(mixOf(voice), Layer::downbeat, 0);
        bank.cue(mixOf(voice), Cue::rise, 0);
        std::vector<float> out(48'000);
        bank.mix(out);
        CHECK(peakOf(out) <= 1.0F);
    }
}

TEST_CASE(
    "a bank prepared for one voice has only that voice's clicks and no cue, even if it had more before") {
    ClickBank bank;
    bank.prepare({44'100});
    bank.prepareVoice({48'000}, Voice::metal);
    for (const auto voice : voices) {
        bank.strike(mixOf(voice), Layer::downbeat, 0);
        std::vector<float> out(4'800);
        bank.mix(out);
        if (voice == Voice::metal)
            CHECK(out == click(Voice::metal, Layer::downbeat, 48'000));
        else
            CHECK(peakOf(out) == 0.0F);
    }
    bank.cue(mixOf(Voice::metal), Cue::rise, 0);
    std::vector<float> out(4'800);
    bank.mix(out);
    CHECK(peakOf(out) == 0.0F);
}

TEST_CASE("a level scales a click and nothing else, a mute silences its layer alone") {
    ClickBank bank;
    bank.prepare({48'000});
    auto mix = mixOf(Voice::reed, 0.5F);
    mix.layerLevel[static_cast<std::size_t>(Layer::beat)] = 0.5F;
    bank.strike(mix, Layer::beat, 0);
    std::vector<float> out(4'800);
    bank.mix(out);
    const auto full = click(Voice::reed, Layer::beat, 48'000);
    for (std::size_t i = 0; i < out.size(); ++i) REQUIRE(out[i] == 0.25F * full[i]);
    mix.muted[static_cast<std::size_t>(Layer::beat)] = true;
    bank.strike(mix, Layer::beat, 0);
    bank.mix(out);
    CHECK(peakOf(out) == 0.0F);
    bank.strike(mix, Layer::group, 0);
    bank.mix(out);
    CHECK(peakOf(out) > 0.0F);
}

TEST_CASE("a level that is not a number is silence") {
    ClickBank bank;
    bank.prepare({48'000});
    bank.strike(mixOf(Voice::wood, std::nanf("")), Layer::beat, 0);
    std::vector<float> out(480);
    bank.mix(out);
    CHECK(peakOf(out) == 0.0F);
    CHECK(std::none_of(out.begin(), out.end(), [](float value) { return std::isnan(value); }));
}

TEST_CASE("rising and falling cues are two notes that rise and fall, and impulse has no cues") {
    const auto pitchIn = [](const std::vector<float>& sound, std::size_t from, std::size_t to) {
        return spectrumOf(std::span(sound).subspan(from, to - from), 48'000).peakHertz;
    };
    const auto rise = cueSound(Cue::rise, 48'000);
    const auto fall = cueSound(Cue::fall, 48'000);
    CHECK(pitchIn(rise, 0, 6'000) * 1.2 < pitchIn(rise, 6'000, 12'000));
    CHECK(pitchIn(fall, 0, 6'000) > 1.2 * pitchIn(fall, 6'000, 12'000));
    CHECK(cueSound(Cue::lastOfStreak, 48'000) != rise);
    for (const auto cue : {Cue::rise, Cue::fall, Cue::lastOfStreak, Cue::turn}) {
        CHECK(lengthOf(cueSound(cue, 48'000)) < 48'000U * 3 / 10);
        ClickBank bank;
        bank.prepare({48'000});
        bank.cue(mixOf(Voice::impulse), cue, 0);
        std::vector<float> out(24'000);
        bank.mix(out);
        CHECK(peakOf(out) == 0.0F);
    }
}

TEST_CASE("the tone that announces a turn is lower, longer and slower to begin than any click") {
    const auto tone = cueSound(Cue::turn, 48'000);
    const auto pitch = spectrumOf(std::span(tone).first(9'600), 48'000).peakHertz;
    CHECK(pitch > 380.0);
    CHECK(pitch < 400.0);
    const auto loudest = [](const std::vector<float>& sound) {
        return std::ranges::max_element(sound, {}, [](float value) { return std::abs(value); }) -
               sound.begin();
    };
    for (const auto voice : sounding)
        for (const auto layer : layers) {
            const auto other = click(voice, layer, 48'000);
            CAPTURE(nameOf(voice));
            CHECK(spectrumOf(other, 48'000).peakHertz > 1.5 * pitch);
            CHECK(lengthOf(tone) > 3 * lengthOf(other));
            CHECK(loudest(tone) > 5 * loudest(other));
        }
}

TEST_CASE("a cue begins and ends without a discontinuity and has no offset") {
    for (const auto cue : {Cue::rise, Cue::fall, Cue::lastOfStreak, Cue::turn}) {
        const auto sound = cueSound(cue, 48'000);
        const auto length = lengthOf(sound);
        double sum = 0;
        for (const float value : sound) sum += static_cast<double>(value);
        CHECK(std::abs(sound[0]) < 0.01F * peakOf(sound));
        CHECK(std::abs(sound[length - 1]) < 0.01F * peakOf(sound));
        CHECK(std::abs(sum) / static_cast<double>(length) < 0.005 * static_cast<double>(peakOf(sound)));
    }
}

TEST_CASE("all layers and all cues at one sample do not exceed full scale, in any voice") {
    for (const auto voice : voices) {
        ClickBank bank;
        bank.prepare({48'000});
        for (const auto layer : layers) bank.strike(mixOf(voice), layer, 0);
        for (const auto cue : {Cue::rise, Cue::fall, Cue::lastOfStreak, Cue::turn})
            bank.cue(mixOf(voice), cue, 0);
        std::vector<float> out(24'000);
        bank.mix(out);
        CAPTURE(nameOf(voice));
        CHECK(peakOf(out) > 0.9F);
        CHECK(peakOf(out) <= 1.0F);
    }
}

TEST_CASE("an offset starts a click later, even beyond the current block") {
    ClickBank bank;
    bank.prepare({48'000});
    bank.strike(mixOf(Voice::impulse), Layer::beat, 100);
    std::vector<float> out(64);
    bank.mix(out);
    CHECK(peakOf(out) == 0.0F);
    bank.mix(out);
    CHECK(out[36] == 0.75F);
}
