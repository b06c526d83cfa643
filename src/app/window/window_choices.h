// SPDX-License-Identifier: GPL-3.0-or-later
// The screens and languages that the window offers to `piolo`, from their tables.
#pragma once

#include "app/window/window_arguments.h"

namespace piolo::app {

/// The screens of the navigation; "system" and the codes of the languages.
[[nodiscard]] WindowChoices windowChoices();

} // namespace piolo::app
