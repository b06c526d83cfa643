// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_rows.h"

#include <algorithm>
#include <unordered_map>
#include <utility>

namespace piolo::models {

PassageRows selectedRows(const Notebook& notebook, const RowSelection& selection, Date today) {
    std::unordered_map<Id, Piece> pieces;
    for (Piece& piece : notebook.pieces()) pieces.emplace(piece.id, std::move(piece));
    PassageRows selected;
    for (const Id id : notebook.passages(selection.removedToo)) {
        const PassageRecord* const record = notebook.passage(id);
        if (record == nullptr) continue;
        const bool isScale = record->passage.scale.has_value();
        if (!isScale && !record->removed) ++selected.total;
        if (isScale && selection.search.isEmpty()) continue;
        const auto piece = pieces.find(record->passage.title.piece);
        PassageRow row =
            rowOf(*record, piece == pieces.end() ? nullptr : &piece->second, notebook.settings(), today);
        if (matches(row, selection.search)) selected.rows.push_back(std::move(row));
    }
    std::ranges::sort(selected.rows, [&](const PassageRow& a, const PassageRow& b) {
        return comesBefore(a, b, selection.order);
    });
    return selected;
}

} // namespace piolo::models
