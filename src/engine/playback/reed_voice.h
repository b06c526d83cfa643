// SPDX-License-Identifier: GPL-3.0-or-later
// A plain reed-like tone for each note of a playback: our own synthesis, no samples of others.
#pragma once

#include "engine/queue/renderer.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace piolo::engine {

/// A note to play: it sounds for `gate` samples, then fades.
struct ReedNote {
    std::int32_t key = 69;  ///< MIDI number, 0…127: 440·2^((key-69)/12) Hz
    std::uint64_t gate = 0; ///< samples before it begins to fade
    float gain = 1.0F;      ///< peak amplitude, 0…1
};

/// Several notes at once. Each is a sum of at most ten harmonics, none above 0.45 of the sample rate; a note
/// without any such harmonic is silent. It fades in and out over 15 ms each, along half a cosine, so that a
/// note that begins where another fades causes neither a gap nor a bump in level. The phase is computed from
/// the note's own sample count, never by summing rounded steps, and no sample depends on where a block
/// begins.
class ReedVoice {
public:
    static constexpr std::size_t mostSounding = 16;
    static constexpr std::int32_t keys = 128;

    /// Builds the tables. Allocates memory: not real-time-safe. Stops all sounding notes.
    void prepare(SampleRate rate);
    /// Starts a note at the next sample. If `mostSounding` notes already sound, the new one stays silent.
    /// Real-time-safe.
    void begin(const ReedNote& note) noexcept;
    /// Fades all sounding notes from the next sample on. Real-time-safe.
    void release() noexcept;
    /// Adds the sounding notes to `out`. Real-time-safe.
    void add(std::span<float> out) noexcept;
    [[nodiscard]] bool sounds() const noexcept { return count_ > 0; }
    /// The number of samples over which a note fades. Call after prepare().
    [[nodiscard]] std::uint64_t fade() const noexcept { return edge_.size() - 1; }

private:
    struct Pitch {
        const float* wave = nullptr; // null: silent
        std::uint64_t step = 0;      // phase increment per sample; 2^64 is one full turn
    };
    struct Sounding {
        Pitch pitch;
        std::uint64_t at = 0; // samples since it began
        std::uint64_t gate = 0;
        float gain = 0.0F;
    };
    [[nodiscard]] bool isOver(const Sounding& note) const noexcept { return note.at >= note.gate + fade(); }
    void addNote(std::span<float> out, Sounding& note) const noexcept;
    [[nodiscard]] float envelope(const Sounding& note) const noexcept;

    std::array<Pitch, keys> pitches_{};
    std::vector<float> edge_{0.0F};                 // from 0 to 1
    std::array<Sounding, mostSounding> sounding_{}; // oldest first
    std::size_t count_ = 0;
};

} // namespace piolo::engine
