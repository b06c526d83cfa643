// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/passage_curves.h"

#include "text/passage_title.h"

#include <algorithm>
#include <optional>

namespace piolo::plots {
namespace {

std::optional<Date> dueOf(const std::vector<Piece>& pieces, Id piece) {
    const auto found =
        std::find_if(pieces.begin(), pieces.end(), [&](const Piece& p) { return p.id == piece; });
    return found == pieces.end() ? std::nullopt : found->due;
}

} // namespace

std::vector<CurveSeries> curvesOf(const Notebook& notebook, const std::vector<Id>& passages, CurveBy by) {
    const std::vector<Piece> pieces = notebook.pieces();
    std::vector<CurveSeries> curves;
    for (const Id id : passages) {
        const PassageRecord* const record = notebook.passage(id);
        if (record == nullptr) continue;
        CurveSeries series = seriesOf(*record, by);
        series.name = text::passageTitle(record->passage);
        series.due = dueOf(pieces, record->passage.title.piece);
        if (!series.points.empty()) curves.push_back(std::move(series));
    }
    return curves;
}

} // namespace piolo::plots
