// SPDX-License-Identifier: GPL-3.0-or-later
// A written pitch as text.
#pragma once

#include "core/base/text_form.h"
#include "core/music/note.h"

#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// "C5", "Bb4", "F##3".
[[nodiscard]] std::string pitchText(WrittenPitch pitch);
/// Reads the format of pitchText(): a capital letter, up to three sharps or flats, the octave.
[[nodiscard]] std::optional<WrittenPitch> pitchNamed(std::string_view text);

template <>
struct TextForm<WrittenPitch> {
    static std::string text(const WrittenPitch& value) { return pitchText(value); }
    static std::optional<WrittenPitch> parse(std::string_view text) { return pitchNamed(text); }
};

} // namespace piolo
