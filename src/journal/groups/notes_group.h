// SPDX-License-Identifier: GPL-3.0-or-later
// The notes of a passage, each as a short text.
#pragma once

#include "core/music/note.h"
#include "journal/json/json_object.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::journal {

/// "3/8 1/16 C#5 73 .(": onset, length, written pitch, sounding MIDI note number and, if there are any, marks
/// in this order: t tied to the previous note, T to the next, . staccato, > accent, - tenuto, ( begin of a
/// slur, ) end of a slur.
[[nodiscard]] std::string noteText(const Note& note);
/// Nothing for any other text: there is only one way to write a note.
[[nodiscard]] std::optional<Note> noteOf(std::string_view text);

/// At most Passage::mostNotes, in order of onset. The first fault is stored where `line` keeps it.
[[nodiscard]] std::vector<Note> notesIn(JsonObject& line);
[[nodiscard]] nlohmann::ordered_json groupOf(const std::vector<Note>& notes);

} // namespace piolo::journal
