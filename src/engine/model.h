// SPDX-License-Identifier: GPL-3.0-or-later
// Plays the model of a passage once: count-in, notes, landing note. Lives on the audio thread.
#pragma once

#include "engine/click_voice.h"
#include "engine/model_pulses.h"
#include "engine/model_score.h"
#include "engine/pulse_grid.h"
#include "engine/reed_voice.h"
#include "engine/teller.h"

#include <array>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <span>

namespace piolo::engine {

/// A model's score where the audio thread can read it. Whoever fills it sets `taken` before the audio thread
/// may see it; the audio thread clears `taken` when it reads it no more.
struct ModelSheet {
    std::atomic<bool> taken{false};
    std::uint64_t number = 0; ///< told with modelBegan and modelEnded
    DrillPlan plan;
    bool click = true;
    std::size_t count = 0;
    std::array<ModelNote, Passage::mostNotes> notes{};
    static_assert(std::atomic<bool>::is_always_lock_free);

    /// Copies the score, the first of its notes as far as there is room. The sender's thread, while it is not
    /// taken.
    void fill(const ModelScore& score) noexcept;
};

/// Everything but prepare() is real-time-safe. What sounds depends on the count of rendered samples alone.
/// It tells modelBegan, the pulses, and modelEnded, and nothing of a run: no run is played.
class Model {
public:
    explicit Model(Teller& teller) : teller_(teller) {}

    /// Not real-time-safe. Ends what plays.
    void prepare(SampleRate rate, std::uint64_t now = 0);
    void setMix(const Mix& mix) noexcept { mix_ = mix; }
    /// Plays `sheet`, which is taken, from sample `now` on; what played ends.
    void start(ModelSheet& sheet, std::uint64_t now) noexcept;
    /// Ends what plays: the notes fade within 15 ms. The sheet is free again.
    void stop(std::uint64_t now) noexcept;
    [[nodiscard]] bool plays() const noexcept { return sheet_ != nullptr; }
    /// Adds to `out`, whose first sample is `now`. While it sounds the sum is kept below full scale.
    void add(std::span<float> out, std::uint64_t now) noexcept;
    /// The sample with which the present sheet ends; what fades is silent so many samples later. Only while
    /// it plays.
    [[nodiscard]] std::uint64_t endSample() const noexcept { return end_; }
    [[nodiscard]] std::uint64_t fade() const noexcept { return static_cast<std::uint64_t>(rate_.hertz) / 10; }

private:
    [[nodiscard]] std::uint64_t sampleOf(ModelMoment moment) const noexcept;
    [[nodiscard]] std::uint64_t noteSample() const noexcept;
    [[nodiscard]] std::uint64_t nextSample() const noexcept;
    bool happensAt(std::uint64_t now) noexcept;
    void pulse() noexcept;
    void findPulse() noexcept;
    void beginNote() noexcept;
    void sound(std::span<float> out) noexcept;
    [[nodiscard]] Event event(Event::Kind kind, std::uint64_t sample) const noexcept;

    Teller& teller_;
    ClickBank bank_;
    ReedVoice reed_;
    SampleRate rate_;
    Mix mix_;
    ModelSheet* sheet_ = nullptr;
    ModelPulses pulses_;
    PulseGrid grid_;
    std::uint64_t pulse_ = 0; // the sample of the next one
    std::uint64_t end_ = 0;
    std::size_t note_ = 0;   // the next one
    std::uint64_t tail_ = 0; // samples for which what has ended may still sound
    std::array<float, 256> clicks_{};
};

} // namespace piolo::engine
