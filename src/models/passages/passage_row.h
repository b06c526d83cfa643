// SPDX-License-Identifier: GPL-3.0-or-later
// One row of the list of passages: its standing in words, and the values for sorting and searching.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/history/notebook.h"

#include <optional>

namespace piolo::models {

struct PassageRow {
    Id id;
    QString title;
    Id piece; ///< none: a separate exercise
    QString pieceName;
    std::optional<Date> due;     ///< of the piece
    std::optional<Date> lastDay; ///< when it was last played
    std::int32_t firstBar = 1;
    QString bars;        ///< "bars 41–44"
    QString tempo;       ///< "84"
    QString target;      ///< "96"
    QString subdivision; ///< "♩ sixteenths"
    QString standing;    ///< "secure on 3 days", "played today", "not played yet"
    double share = 0;    ///< progress from start to target, 0…1
    int streak = 0;
    int cleanRuns = 1;
    bool secure = false; ///< as a whole: on as many different days as the setting requires
    bool removed = false;
    bool operator==(const PassageRow&) const = default;
};

/// The row of a passage. `piece` is null for a separate exercise.
[[nodiscard]] PassageRow rowOf(const PassageRecord& record, const Piece* piece,
                               const PracticeSettings& settings, Date today);

/// True if every word of `search` occurs in the title, the piece's name, the bars or the subdivision, in any
/// case.
[[nodiscard]] bool matches(const PassageRow& row, const QString& search);

enum class PassageOrder : std::uint8_t {
    due,          ///< by piece: the next date first, then pieces without a date, then exercises
    notPlayed,    ///< never played first, then the longest ago
    farFromTarget ///< the least progress first
};
[[nodiscard]] bool comesBefore(const PassageRow& a, const PassageRow& b, PassageOrder order);

} // namespace piolo::models
