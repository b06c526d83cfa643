// SPDX-License-Identifier: GPL-3.0-or-later
// A note as a short text.
#pragma once

#include "core/base/text_form.h"
#include "core/music/note.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace piolo {

/// "3/8 1/16 C#5 73 .(": onset, length, written pitch, sounding MIDI note number and, if there are any, marks
/// in this order: t tied to the previous note, T to the next, . staccato, > accent, - tenuto, ( begin of a
/// slur, ) end of a slur.
[[nodiscard]] std::string noteText(const Note& note);
/// Nothing for any other text: there is only one way to write a note.
[[nodiscard]] std::optional<Note> noteOf(std::string_view text);
/// Each begins no earlier than the one before it.
[[nodiscard]] bool areInOrder(const std::vector<Note>& notes);

template <>
struct TextForm<Note> {
    static std::string text(const Note& value) { return noteText(value); }
    static std::optional<Note> parse(std::string_view text) { return noteOf(text); }
};

} // namespace piolo
