// SPDX-License-Identifier: GPL-3.0-or-later
// Words instead of numbers: small counts, and the musical names of subdivisions.
#pragma once

#include "core/time/subdivision.h"

#include <QString>

namespace piolo::text {

/// "one" … "twelve", digits beyond; also digits below one.
[[nodiscard]] QString numberWord(int count);
/// "no stop", "1 stop", "2 stops".
[[nodiscard]] QString stopsWord(int stops);
/// "sixteenths"; empty for SubdivisionName::other.
[[nodiscard]] QString subdivisionWord(SubdivisionName name);

} // namespace piolo::text
