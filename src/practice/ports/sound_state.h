// SPDX-License-Identifier: GPL-3.0-or-later
// The current state of sound output.
#pragma once

#include <cstdint>
#include <string>

namespace piolo::practice {

/// Plain values, any thread.
struct SoundState {
    enum class Kind { starting, playing, silent, needsRestart };
    Kind kind = Kind::starting;
    std::string deviceName;      ///< of the device in use, "" if silent
    std::int32_t rate = 0;       ///< of the device in use, 0 if silent
    std::uint64_t underruns = 0; ///< since the start
    bool operator==(const SoundState&) const = default;
};

} // namespace piolo::practice
