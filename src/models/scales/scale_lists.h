// SPDX-License-Identifier: GPL-3.0-or-later
// Choices for scales as lists of {value, text}; the values are core's names.
#pragma once

#include <QString>
#include <QVariantList>

#include <string_view>

namespace piolo::models {

// Window thread.

[[nodiscard]] QVariantList scaleKindChoices();
[[nodiscard]] QVariantList rangeChoices();
[[nodiscard]] QVariantList patternChoices();
[[nodiscard]] QVariantList keyOrderChoices();

/// The value of a choice for one of core's names.
[[nodiscard]] QString wordOf(std::string_view name);

} // namespace piolo::models
