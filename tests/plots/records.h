// SPDX-License-Identifier: GPL-3.0-or-later
// Passage records for drawing, made without a journal: a short string gives the runs of a day.
#pragma once

#include "core/history/notebook.h"

#include <string_view>

namespace piolo::plots {

/// A passage from 60 to 96, drop 4, climb 2 after two clean runs, still at its start tempo.
PassageRecord freshRecord();
/// Plays runs through the rule on a day of April 2026: 'c' clean, 'm' missed, 'v' void, 't' a clean try,
/// 'u' a missed try.
void play(PassageRecord& record, int day, std::string_view marks);
/// Sets the tempo manually.
void set(PassageRecord& record, int day, Tempo tempo);

/// Creates the application that text needs, once.
void needFonts();

} // namespace piolo::plots
