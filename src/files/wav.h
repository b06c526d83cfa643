// SPDX-License-Identifier: GPL-3.0-or-later
// RIFF/WAVE, float32 mono: header of 58 bytes with a fact chunk, as docs/time.md has it.
#pragma once

#include "core/base/result.h"
#include "files/atomic_file.h"

#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace piolo::files {

/// The most frames that fit a 4 GiB file.
[[nodiscard]] std::uint64_t mostWavFrames() noexcept;

/// Streams frames into an atomic file whose length is known in advance.
class WavWriter {
public:
    /// Faults: tooLarge, cannotWrite, diskFull.
    static Result<WavWriter> create(const std::string& path, std::int32_t rate, std::uint64_t frames);
    WavWriter(WavWriter&&) noexcept;
    WavWriter& operator=(WavWriter&&) noexcept;
    ~WavWriter();
    Done write(std::span<const float> samples);
    /// Puts the file in place. Exactly the announced number of frames must have been written.
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

/// Reads float32 mono. Faults: cannotRead, badWav when it is anything else.
Result<Wav> readWav(const std::string& path);

} // namespace piolo::files
