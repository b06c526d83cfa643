// SPDX-License-Identifier: GPL-3.0-or-later
// Which rows the list of passages shows, and in which order.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "models/passages/passage_row.h"

#include <vector>

namespace piolo::models {

struct RowSelection {
    QString search; ///< as in matches()
    PassageOrder order = PassageOrder::due;
    bool removedToo = false; ///< with the removed passages
};

struct PassageRows {
    std::vector<PassageRow> rows;
    int total = 0; ///< passages that are neither removed nor scales, selected or not
};

/// Scales have a grid of their own: they are selected only by a search.
[[nodiscard]] PassageRows selectedRows(const Notebook& notebook, const RowSelection& selection, Date today);

} // namespace piolo::models
