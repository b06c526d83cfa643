// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/click_voice.h"

#include "engine/click/ceiling.h"
#include "engine/click/click_table.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace piolo::engine {

namespace {

constexpr std::size_t mostSounding = 64;
constexpr std::size_t cueCount = 4;
constexpr std::size_t voiceCount = voices.size();

/// A rendered click and its peak.
struct Table {
    std::vector<float> samples;
    float peak = 0.0F;

    Table() = default;
    explicit Table(std::vector<float> made) : samples(std::move(made)) {
        for (const float value : samples) peak = std::max(peak, std::abs(value));
    }
};

/// A sounding click; its gain was fixed when it was struck.
struct Sounding {
    std::span<const float> rest;
    float gain = 0.0F;
    float peak = 0.0F; // including the gain
    std::size_t delay = 0;
    bool impulse = false;
};

/// In steps of a fixed length, so that the compiler can vectorise them.
void addScaled(float* __restrict out, const float* __restrict in, std::size_t count, float gain) noexcept {
    constexpr std::size_t step = 16;
    for (; count >= step; count -= step, out += step, in += step)
        for (std::size_t i = 0; i < step; ++i) out[i] += gain * in[i];
    for (std::size_t i = 0; i < count; ++i) out[i] += gain * in[i];
}

void addTo(std::span<float> out, Sounding& click) noexcept {
    const auto begin = std::min(click.delay, out.size());
    const auto count = std::min(out.size() - begin, click.rest.size());
    addScaled(out.data() + begin, click.rest.data(), count, click.gain);
    click.delay -= begin;
    click.rest = click.rest.subspan(count);
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
    case Layer::playback:
        break;
    }
    return Stroke::beat;
}

} // namespace

struct ClickBank::Tables {
    std::array<std::array<Table, strokeCount>, voiceCount> clicks;
    std::array<Table, cueCount> cues;

    void addVoice(SampleRate rate, Voice voice) {
        auto& strokes = clicks[static_cast<std::size_t>(voice)];
        for (std::size_t i = 0; i < strokes.size(); ++i)
            strokes[i] = Table(clickTable(voice, static_cast<Stroke>(i), rate));
    }
    void addCues(SampleRate rate) {
        for (std::size_t i = 0; i < cues.size(); ++i) cues[i] = Table(cueTable(static_cast<Cue>(i), rate));
    }
};

struct ClickBank::State {
    std::shared_ptr<const Tables> tables = std::make_shared<const Tables>();
    std::array<Sounding, mostSounding> sounding{}; // oldest first
    std::size_t count = 0;

    void use(std::shared_ptr<const Tables> made) {
        count = 0;
        tables = std::move(made);
    }
    void begin(const Sounding& click) noexcept {
        // A sounding click is never cut off: if there is no room, the new one stays silent.
        if (!(click.gain > 0.0F) || click.rest.empty() || count == mostSounding) return;
        sounding[count++] = click;
    }
    void begin(const Table& table, float gain, std::size_t delay, bool impulse) noexcept {
        begin({table.samples, gain, gain * table.peak, delay, impulse});
    }
    /// Adds the tones, or the impulses. Returns an upper bound of their sum: the bounds are added and rounded
    /// like the samples, so no sample exceeds it.
    float add(std::span<float> out, bool impulses) noexcept {
        float bound = 0.0F;
        for (auto& click : std::span(sounding).first(count)) {
            if (click.impulse != impulses) continue;
            addTo(out, click);
            bound += click.peak;
        }
        return bound;
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
    auto made = std::make_shared<Tables>();
    for (const Voice voice : voices) made->addVoice(rate, voice);
    made->addCues(rate);
    state_->use(std::move(made));
}

void ClickBank::prepareVoice(SampleRate rate, Voice voice) {
    auto made = std::make_shared<Tables>();
    made->addVoice(rate, voice);
    state_->use(std::move(made));
}

void ClickBank::prepareLike(const ClickBank& other) { state_->use(other.state_->tables); }

void ClickBank::strike(const Mix& mix, Layer layer, std::uint32_t offset, bool barBegins) noexcept {
    const auto stroke = static_cast<std::size_t>(strokeOf(layer, barBegins));
    const auto& table = state_->tables->clicks[static_cast<std::size_t>(mix.voice)][stroke];
    state_->begin(table, mix.gainOf(layer), offset, isForMeasurement(mix.voice));
}

void ClickBank::cue(const Mix& mix, Cue cue, std::uint32_t offset) noexcept {
    if (isForMeasurement(mix.voice)) return;
    state_->begin(state_->tables->cues[static_cast<std::size_t>(cue)], mix.gainOf(Layer::cue), offset, false);
}

void ClickBank::mix(std::span<float> out) noexcept {
    std::fill(out.begin(), out.end(), 0.0F);
    if (state_->count == 0) return;
    const float tones = state_->add(out, false);
    if (tones > knee)
        for (auto& value : out) value = bent(value);
    const float impulses = state_->add(out, true);
    if (std::min(tones, 1.0F) + impulses > 1.0F)
        for (auto& value : out) value = std::clamp(value, -1.0F, 1.0F);
    state_->dropFinished();
}

} // namespace piolo::engine
