// SPDX-License-Identifier: GPL-3.0-or-later
// The passages that lists with ticks offer, in their order.
#pragma once

#include "practice/log/practice_book.h"

#include <QString>

#include <vector>

namespace piolo::models {

struct PickRow {
    Id id;
    QString title, piece;
    bool operator==(const PickRow&) const = default;
};

/// All passages that are not removed: the next due date first.
[[nodiscard]] std::vector<PickRow> pickRows(const practice::PracticeBook& book);

} // namespace piolo::models
