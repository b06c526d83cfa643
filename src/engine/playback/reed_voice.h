// SPDX-License-Identifier: GPL-3.0-or-later
// A plain reed-like tone for each note of a playback: our own synthesis, no one's sample.
#pragma once

#include "engine/queue/renderer.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace piolo::engine {

/// A note as it sounds: so many samples from its first, then it fades.
struct ReedNote {
    std::int32_t key = 69;  ///< MIDI number, 0…127: 440·2^((key-69)/12) Hz
    std::uint64_t gate = 0; ///< samples before the fade begins
    float gain = 1.0F;      ///< the tone's peak, 0…1
};

/// Several notes at once. Each is a sum of at most ten harmonics, none of them above 0.45 of the rate; a note
/// with none left is silent. It swells for 15 ms and fades for 15 ms, both as half a cosine, so that a note
/// that begins where another fades leaves no gap and no bump of level. The phase is that of the note's own
/// count of samples, never a sum of rounded steps, and no sample depends on where a block begins.
class ReedVoice {
public:
    static constexpr std::size_t mostSounding = 16;
    static constexpr std::int32_t keys = 128;

    /// Builds the tables. Takes memory: not real-time-safe. What sounded is gone.
    void prepare(SampleRate rate);
    /// Begins with the next sample. With `mostSounding` notes sounding the new one stays silent.
    /// Real-time-safe.
    void begin(const ReedNote& note) noexcept;
    /// What sounds fades from the next sample on. Real-time-safe.
    void release() noexcept;
    /// Adds to `out` what sounds. Real-time-safe.
    void add(std::span<float> out) noexcept;
    [[nodiscard]] bool sounds() const noexcept { return count_ > 0; }
    /// How long a note fades. After prepare().
    [[nodiscard]] std::uint64_t fade() const noexcept { return edge_.size() - 1; }

private:
    struct Sounding {
        const float* wave = nullptr;
        std::uint64_t step = 0; // of a turn of 2^64, in one sample
        std::uint64_t at = 0;   // samples since it began
        std::uint64_t gate = 0;
        float gain = 0.0F;
    };
    [[nodiscard]] bool isOver(const Sounding& note) const noexcept { return note.at >= note.gate + fade(); }
    void addNote(std::span<float> out, Sounding& note) const noexcept;
    [[nodiscard]] float envelope(const Sounding& note) const noexcept;

    std::vector<std::vector<float>> waves_; // by how many harmonics they have, from 1
    std::array<std::uint64_t, keys> steps_{};
    std::array<std::int32_t, keys> harmonics_{};
    std::vector<float> edge_{0.0F};                 // from 0 to 1
    std::array<Sounding, mostSounding> sounding_{}; // the oldest first
    std::size_t count_ = 0;
};

} // namespace piolo::engine
