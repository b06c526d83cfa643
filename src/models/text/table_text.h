// SPDX-License-Identifier: GPL-3.0-or-later
// A name from a table of the program, in the form for QML.
#pragma once

#include <QString>

#include <string_view>

namespace piolo::models {

/// `name` has only ASCII characters.
[[nodiscard]] inline QString tableText(std::string_view name) {
    return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

} // namespace piolo::models
