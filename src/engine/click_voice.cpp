// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click_voice.h"

#include "engine/click_table.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace piolo::engine {

namespace {

constexpr std::size_t mostSounding = 64;
constexpr std::size_t cueCount = 3;
constexpr std::size_t voiceCount = voices.size();

/// One click on its way: its gain was settled when it was struck.
struct Sounding {
    std::span<const float> rest;
    float gain = 0.0F;
    std::size_t delay = 0;
    bool impulse = false;
};

void addTo(std::span<float> out, Sounding& click) noexcept {
    const auto begin = std::min(click.delay, out.size());
    const auto count = std::min(out.size() - begin, click.rest.size());
    for (std::size_t i = 0; i < count; ++i) out[begin + i] += click.gain * click.rest[i];
    click.delay -= begin;
    click.rest = click.rest.subspan(count);
}

/// Leaves what lies inside ±0.9 as it is and bends what is beyond towards ±1, which it never reaches.
float bent(float value) noexcept {
    constexpr float knee = 0.9F;
    const float beyond = std::abs(value) - knee;
    if (beyond <= 0.0F) return value;
    constexpr float head = 1.0F - knee;
    return std::copysign(knee + head * beyond / (beyond + head), value);
}

float gainOf(const Mix& mix, Layer layer) noexcept {
    const auto index = static_cast<std::size_t>(layer);
    if (mix.muted[index]) return 0.0F;
    return std::clamp(mix.level, 0.0F, 1.0F) * std::clamp(mix.layerLevel[index], 0.0F, 1.0F);
}

Stroke strokeOf(Layer layer, bool barBegins) noexcept {
    switch (layer) {
    case Layer::downbeat:
        return Stroke::downbeat;
    case Layer::group:
        return Stroke::group;
    case Layer::subdivision:
        return Stroke::subdivision;
    case Layer::countIn:
        return barBegins ? Stroke::countInBar : Stroke::countIn;
    case Layer::beat:
    case Layer::cue:
        break;
    }
    return Stroke::beat;
}

} // namespace

struct ClickBank::State {
    std::array<std::array<std::vector<float>, strokeCount>, voiceCount> clicks;
    std::array<std::vector<float>, cueCount> cues;
    std::array<Sounding, mostSounding> sounding{}; // the oldest first
    std::size_t count = 0;

    void begin(const Sounding& click) noexcept {
        // No sounding click is ever cut: with no place left the new one stays silent.
        if (!(click.gain > 0.0F) || click.rest.empty() || count == mostSounding) return;
        sounding[count++] = click;
    }
    void dropFinished() noexcept {
        const auto last = sounding.begin() + static_cast<std::ptrdiff_t>(count);
        const auto kept =
            std::remove_if(sounding.begin(), last, [](const Sounding& click) { return click.rest.empty(); });
        count = static_cast<std::size_t>(kept - sounding.begin());
    }
};

ClickBank::ClickBank() : state_(std::make_unique<State>()) {}
ClickBank::~ClickBank() = default;

void ClickBank::prepare(SampleRate rate) {
    state_->count = 0;
    for (const auto voice : voices)
        for (int stroke = 0; stroke < strokeCount; ++stroke)
            state_->clicks[static_cast<std::size_t>(voice)][static_cast<std::size_t>(stroke)] =
                clickTable(voice, static_cast<Stroke>(stroke), rate);
    for (std::size_t cue = 0; cue < cueCount; ++cue)
        state_->cues[cue] = cueTable(static_cast<Cue>(cue), rate);
}

void ClickBank::strike(const Mix& mix, Layer layer, std::uint32_t offset, bool barBegins) noexcept {
    const auto stroke = static_cast<std::size_t>(strokeOf(layer, barBegins));
    const auto& table = state_->clicks[static_cast<std::size_t>(mix.voice)][stroke];
    state_->begin({table, gainOf(mix, layer), offset, mix.voice == Voice::impulse});
}

void ClickBank::cue(const Mix& mix, Cue cue, std::uint32_t offset) noexcept {
    if (mix.voice == Voice::impulse) return;
    state_->begin({state_->cues[static_cast<std::size_t>(cue)], gainOf(mix, Layer::cue), offset, false});
}

void ClickBank::mix(std::span<float> out) noexcept {
    std::fill(out.begin(), out.end(), 0.0F);
    const auto all = std::span(state_->sounding).first(state_->count);
    if (all.empty()) return;
    for (auto& click : all)
        if (!click.impulse) addTo(out, click);
    for (auto& value : out) value = bent(value);
    for (auto& click : all)
        if (click.impulse) addTo(out, click);
    for (auto& value : out) value = std::clamp(value, -1.0F, 1.0F);
    state_->dropFinished();
}

} // namespace piolo::engine
