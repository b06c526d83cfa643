// SPDX-License-Identifier: GPL-3.0-or-later
// One line of the list of passages: where it stands, in words, and what it is sorted and searched by.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "core/history/notebook.h"

#include <optional>

namespace piolo::models {

struct PassageRow {
    Id id;
    QString title;
    Id piece; ///< none: an exercise of its own
    QString pieceName;
    std::optional<Date> due;     ///< of the piece
    std::optional<Date> lastDay; ///< it was last played
    std::int32_t firstBar = 1;
    QString bars;        ///< "bars 41–44"
    QString tempo;       ///< "84"
    QString target;      ///< "96"
    QString subdivision; ///< "♩ sixteenths"
    QString standing;    ///< "secure on 3 days", "played today", "not played yet"
    double share = 0;    ///< of the way from start to target, 0…1
    int streak = 0;
    int cleanRuns = 1;
    bool secure = false; ///< as a whole: on as many different days as the setting asks
    bool removed = false;
    bool operator==(const PassageRow&) const = default;
};

/// The row of a passage. `piece` null: on its own.
[[nodiscard]] PassageRow rowOf(const PassageRecord& record, const Piece* piece,
                               const PracticeSettings& settings, Date today);

/// True when every word of `search` stands in the title, the piece's name, the bars or the subdivision,
/// whatever the case.
[[nodiscard]] bool matches(const PassageRow& row, const QString& search);

enum class PassageOrder : std::uint8_t {
    due,          ///< by piece: the next date first, pieces without a date after, exercises last
    notPlayed,    ///< never played first, then the longest ago
    farFromTarget ///< the least of the way to the target first
};
[[nodiscard]] bool standsBefore(const PassageRow& a, const PassageRow& b, PassageOrder order);

} // namespace piolo::models
