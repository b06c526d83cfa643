// SPDX-License-Identifier: GPL-3.0-or-later
// A passage in one line, as the drill and the passage's own page show it below its title.
#pragma once

#include "core/history/notebook.h"

#include <QString>

namespace piolo::models {

/// "Ferrywake Suite · 4/4 · bars 41–44 · one-bar count-in · a miss drops 4, five clean in a row climb 2". The
/// piece is left out if the title names it.
[[nodiscard]] QString aboutPassage(const Notebook& notebook, const Passage& passage);

} // namespace piolo::models
