// SPDX-License-Identifier: GPL-3.0-or-later
// Reads what people type: integers, tempi and dates, in the locale's format or the plain one.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/time/tempo.h"
#include "core/time/timestamp.h"

#include <optional>

namespace piolo::models {

/// The most characters of a title or name.
inline constexpr int longestTypedName = 120;

/// An integer in least…most; surrounding spaces are ignored.
[[nodiscard]] std::optional<int> readCount(const QString& text, int least, int most);
/// "84", "72.5", also with the locale's decimal point or a comma; at most three decimal places, 10 to 400.
[[nodiscard]] std::optional<Tempo> readTempo(const QString& text);
/// "2027-05-12", "12 May 2027" with the month in the locale's language or in English, or the locale's short
/// format.
[[nodiscard]] std::optional<Date> readDate(const QString& text);
/// A date in the format for typing: "12 May 2027".
[[nodiscard]] QString dateForTyping(Date date);

} // namespace piolo::models
