// SPDX-License-Identifier: GPL-3.0-or-later
// A sound device that can be chosen.
#pragma once

#include <string>

namespace piolo::practice {

/// Plain values, any thread.
struct SoundOutput {
    std::string id;   ///< opaque; identifies the output to choose() and start()
    std::string name; ///< for display
};

} // namespace piolo::practice
