// SPDX-License-Identifier: GPL-3.0-or-later
// Writes <note> with everything that belongs to it.
#pragma once

#include "score/write/accidentals.h"
#include "score/write/notation.h"

#include <cstdint>
#include <pugixml.hpp>
#include <string_view>
#include <vector>

namespace piolo::score {

/// Adds a child element that contains a text or a number.
pugi::xml_node addText(pugi::xml_node parent, const char* name, std::string_view text);
pugi::xml_node addNumber(pugi::xml_node parent, const char* name, std::int64_t number);

/// One element for each head, or one for a rest. `ticksPerDivision` divides the note's ticks.
void addNote(pugi::xml_node measure, const NotatedNote& note, const std::vector<std::string_view>& beams,
             std::int64_t ticksPerDivision, Accidentals& accidentals);

} // namespace piolo::score
