// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/pick_rows.h"

#include "models/passages/passage_row.h"
#include "text/one_line.h"

#include <algorithm>
#include <map>

namespace piolo::models {

std::vector<PickRow> pickRows(const practice::PracticeBook& book) {
    const Notebook& notebook = book.notebook();
    std::map<Id, Piece> pieces;
    for (const Piece& piece : notebook.pieces(true)) pieces.emplace(piece.id, piece);
    std::vector<PassageRow> ordered;
    for (const Id id : notebook.passages()) {
        const PassageRecord& record = *notebook.passage(id);
        const auto piece = pieces.find(record.passage.title.piece);
        ordered.push_back(rowOf(record, piece == pieces.end() ? nullptr : &piece->second, notebook.settings(),
                                book.today()));
    }
    std::sort(ordered.begin(), ordered.end(),
              [](const PassageRow& a, const PassageRow& b) { return comesBefore(a, b, PassageOrder::due); });
    std::vector<PickRow> rows;
    for (const PassageRow& row : ordered)
        rows.push_back(
            {row.id, text::onOneLine(row.title.toStdString()), text::onOneLine(row.pieceName.toStdString())});
    return rows;
}

} // namespace piolo::models
