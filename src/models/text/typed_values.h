// SPDX-License-Identifier: GPL-3.0-or-later
// Reads what people type: whole numbers, tempi and dates, in the locale or the plain way.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "core/time/tempo.h"
#include "core/time/timestamp.h"

#include <optional>

namespace piolo::models {

/// Letters of a title or name.
inline constexpr int longestTypedName = 120;

/// A whole number in least…most, spaces around it ignored.
[[nodiscard]] std::optional<int> readCount(const QString& text, int least, int most);
/// "84", "72.5", also with the locale's decimal point or a comma; three decimals at most, 10 to 400.
[[nodiscard]] std::optional<Tempo> readTempo(const QString& text);
/// "2027-05-12", "12 May 2027" with the month in the locale's words or in English, or the locale's short
/// form.
[[nodiscard]] std::optional<Date> readDate(const QString& text);
/// A date as it is shown for typing: "12 May 2027".
[[nodiscard]] QString dateForTyping(Date date);

} // namespace piolo::models
