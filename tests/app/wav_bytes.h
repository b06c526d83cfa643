// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a WAV file byte by byte, independently of the code that wrote it.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace piolo::test {

struct Onset {
    std::uint64_t sample = 0;
    float level = 0.0F;
    bool operator==(const Onset&) const = default;
};

struct WavSound {
    std::uint32_t rate = 0;
    std::vector<float> samples;
    /// Every sample that is not 0.
    [[nodiscard]] std::vector<Onset> onsets() const;
};

/// Checks the 58-byte header field by field against what SoX 14.4 writes for float32 mono.
WavSound readSound(const std::string& path);

/// The sample nearest to k · 60 · rate / (tempo · n), halves rounded up, in integers straight from the
/// definition.
std::uint64_t nearestSample(std::uint64_t k, std::uint64_t rate, std::uint64_t tempoThousandths,
                            std::uint64_t n);

} // namespace piolo::test
