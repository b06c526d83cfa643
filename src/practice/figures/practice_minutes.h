// SPDX-License-Identifier: GPL-3.0-or-later
// How long was practised on a day.
#pragma once

#include "core/history/notebook.h"

namespace piolo::practice {

/// The whole minutes played on that day, all passages together.
[[nodiscard]] int minutesOn(const Notebook& notebook, Date date);

} // namespace piolo::practice
