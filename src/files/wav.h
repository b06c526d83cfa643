// SPDX-License-Identifier: GPL-3.0-or-later
// RIFF/WAVE, float32 mono, with a 58-byte header including a fact chunk, as described in docs/time.md.
#pragma once

#include "core/base/result.h"
#include "files/atomic_file.h"

#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace piolo::files {

/// The largest number of frames in a 4 GiB file.
[[nodiscard]] std::uint64_t mostWavFrames() noexcept;

/// Streams frames into an atomic file. The number of frames is known in advance.
class WavWriter {
public:
    /// Faults: tooLarge, cannotWrite, diskFull.
    static Result<WavWriter> create(const std::string& path, std::int32_t rate, std::uint64_t frames);
    WavWriter(WavWriter&&) noexcept;
    WavWriter& operator=(WavWriter&&) noexcept;
    ~WavWriter();
    Done write(std::span<const float> samples);
    /// Puts the file in place. Exactly the number of frames given to create() must have been written.
    Done commit();

private:
    struct Body;
    explicit WavWriter(std::unique_ptr<Body> body);
    std::unique_ptr<Body> body_;
};

struct Wav {
    std::int32_t rate = 0;
    std::vector<float> samples; ///< mono
};

/// Reads float32 mono. Faults: cannotRead; badWav for anything else.
Result<Wav> readWav(const std::string& path);

} // namespace piolo::files
