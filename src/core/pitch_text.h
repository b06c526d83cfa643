// SPDX-License-Identifier: GPL-3.0-or-later
// A written pitch as text.
#pragma once

#include "core/note.h"

#include <string>

namespace piolo {

/// "C5", "Bb4", "F##3".
[[nodiscard]] std::string pitchText(WrittenPitch pitch);

} // namespace piolo
