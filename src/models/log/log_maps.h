// SPDX-License-Identifier: GPL-3.0-or-later
// The log's lines and entries as QML reads them.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QVariantMap>

#include "models/log/log_lines.h"

namespace piolo::models {

/// {time, title, tempo, marks, effect, note, spoken}: `note` holds the players' words on any of its entries.
[[nodiscard]] QVariantMap lineMap(const practice::LogLine& line);
/// The line's entries one by one: {entry, passage, time, marks, mark, detail, note, canNote}. `passage` is a
/// run-through's piece.
[[nodiscard]] QVariantList entryMaps(const practice::LogLine& line);

} // namespace piolo::models
