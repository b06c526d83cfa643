// SPDX-License-Identifier: GPL-3.0-or-later
// An id in the form for QML.
#pragma once

#include "core/base/id.h"

#include <QString>

namespace piolo::models {

/// Its 32 hexadecimal digits; "" for none.
[[nodiscard]] inline QString idText(Id id) {
    return id.isNone() ? QString() : QString::fromStdString(id.text());
}

/// The id written like that; none if it is not one.
[[nodiscard]] inline Id idOf(const QString& text) { return Id::parse(text.toStdString()).value_or(Id{}); }

} // namespace piolo::models
