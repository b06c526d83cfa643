// SPDX-License-Identifier: GPL-3.0-or-later
// Plays a passage once: count-in, notes, landing note. Lives on the audio thread.
#pragma once

#include "engine/click/click_voice.h"
#include "engine/drill/event_sender.h"
#include "engine/playback/playback_pulses.h"
#include "engine/playback/playback_score.h"
#include "engine/playback/reed_voice.h"
#include "engine/time/pulse_grid.h"

#include <array>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <span>

namespace piolo::engine {

/// A playback's score where the audio thread can read it. The sender sets `taken` before the audio thread may
/// see it; the audio thread clears `taken` when it no longer reads it.
struct PlaybackSlot {
    std::atomic<bool> taken{false};
    std::uint64_t number = 0; ///< sent with playbackBegan and playbackEnded
    DrillPlan plan;
    bool click = true;
    bool cue = false;
    std::size_t count = 0;
    std::array<PlaybackNote, Passage::mostNotes> notes{};
    static_assert(std::atomic<bool>::is_always_lock_free);

    /// Copies the score, with as many of its first notes as fit. Sender thread, while not taken.
    void fill(const PlaybackScore& score) noexcept;
};

/// Everything except prepare() is real-time-safe. What sounds depends only on the number of rendered samples.
/// Sends playbackBegan, the pulses and playbackEnded; no run events, because no run is played.
class Playback {
public:
    explicit Playback(EventSender& sender) : sender_(sender) {}

    /// Not real-time-safe. Ends the current playback.
    void prepare(SampleRate rate, std::uint64_t now = 0);
    /// The same, with the clicks of a bank that is already prepared for that rate.
    void prepare(SampleRate rate, std::uint64_t now, const ClickBank& clicks);
    void setMix(const Mix& mix) noexcept { mix_ = mix; }
    /// Plays `sheet`, which must be taken, starting at sample `now`; ends the current playback.
    void start(PlaybackSlot& sheet, std::uint64_t now) noexcept;
    /// Ends the current playback: the notes fade within 15 ms. Releases the sheet.
    void stop(std::uint64_t now) noexcept;
    [[nodiscard]] bool plays() const noexcept { return sheet_ != nullptr; }
    /// Adds to `out`, whose first sample is `now`. While it sounds, the sum is kept below full scale.
    void add(std::span<float> out, std::uint64_t now) noexcept;
    /// The sample at which the current sheet ends; after another fade() samples everything is silent. Only
    /// while it plays.
    [[nodiscard]] std::uint64_t endSample() const noexcept { return end_; }
    [[nodiscard]] std::uint64_t fade() const noexcept { return static_cast<std::uint64_t>(rate_.hertz) / 10; }

private:
    [[nodiscard]] std::uint64_t sampleOf(PlaybackMoment moment) const noexcept;
    [[nodiscard]] std::uint64_t noteSample() const noexcept;
    [[nodiscard]] std::uint64_t nextSample() const noexcept;
    bool happensAt(std::uint64_t now) noexcept;
    void pulse() noexcept;
    void findPulse() noexcept;
    void beginNote() noexcept;
    void sound(std::span<float> out) noexcept;
    [[nodiscard]] Event event(Event::Kind kind, std::uint64_t sample) const noexcept;

    EventSender& sender_;
    ClickBank bank_;
    ReedVoice reed_;
    SampleRate rate_;
    Mix mix_;
    PlaybackSlot* sheet_ = nullptr;
    PlaybackPulses pulses_;
    PulseGrid grid_;
    std::uint64_t pulse_ = 0; // the sample of the next pulse
    std::uint64_t end_ = 0;
    std::size_t note_ = 0;   // the next note
    std::uint64_t tail_ = 0; // number of samples for which notes that have ended may still sound
    std::array<float, 256> clicks_{};
};

} // namespace piolo::engine
