// SPDX-License-Identifier: GPL-3.0-or-later
// The size of a picture, from an option.
#pragma once

#include "command/options/option_reader.h"

namespace piolo::command {

/// In device-independent pixels.
struct PictureSize {
    int width = 0;
    int height = 0;
};

/// Reads --size, "960x360", both from 64 to 8192. Fault badChoice.
[[nodiscard]] PictureSize readSize(OptionReader& in, PictureSize fallback);

} // namespace piolo::command
