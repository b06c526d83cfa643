// SPDX-License-Identifier: GPL-3.0-or-later
// The lines and entries of the log in a form for QML.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QVariantMap>

#include "models/log/log_lines.h"

namespace piolo::models {

/// {time, title, tempo, marks, effect, note, spoken}: `note` has the player's notes on its entries, the first
/// five of them.
[[nodiscard]] QVariantMap lineMap(const practice::LogLine& line);
/// The first `most` entries of the line: {entry, passage, time, marks, mark, detail, note, canNote}. For a
/// run-through, `passage` is its piece.
[[nodiscard]] QVariantList entryMaps(const practice::LogLine& line, int most);

} // namespace piolo::models
