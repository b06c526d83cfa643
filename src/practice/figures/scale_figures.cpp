// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/scale_figures.h"

#include "practice/log/passage_saving.h"

#include <algorithm>
#include <span>

namespace piolo::practice {

const ScaleGrid& ScaleFigures::grid() const {
    if (!grid_) grid_ = gridOf(book_.notebook(), settings().view, settings().instrument);
    return *grid_;
}

const ScaleCell& ScaleFigures::at(CellAddress address) const {
    return grid().at(address.notesPerBeat, address.key);
}

std::array<int, keyCount> ScaleFigures::order() const {
    return keysInOrder(settings().order, static_cast<std::uint32_t>(settings().seed));
}

int ScaleFigures::columnOf(int key) const {
    const auto keys = order();
    return static_cast<int>(std::ranges::find(keys, key) - keys.begin());
}

Tonic ScaleFigures::tonic(int key) const { return settings().spelling.tonic(key, settings().view.kind); }

CellProposal ScaleFigures::proposal() const {
    const NoteRange range = playerOf(settings()).range;
    const auto all = order();
    std::vector<int> keys;
    for (const int key : all)
        if (hasTonic(range, tonic(key))) keys.push_back(key);
    return nextCell(grid(), keys.empty() ? std::span<const int>(all) : keys, book_.today());
}

StartProposal ScaleFigures::start(CellAddress address) const {
    return startFor(grid(), address.notesPerBeat, address.key);
}

Tempo ScaleFigures::goesOnAt(CellAddress address) const {
    const ScaleCell& cell = at(address);
    return book_.notebook().opening(cell.passage, book_.today()).value_or(cell.tempo);
}

double ScaleFigures::shareOfTarget(CellAddress address) const {
    const ScaleCell& cell = at(address);
    const PassageRecord* const record = book_.notebook().passage(cell.passage);
    if (record == nullptr || !cell.best) return 0;
    const double target = record->passage.tempi.rule.target.thousandths();
    return std::min(1.0, cell.best->thousandths() / target);
}

std::vector<ScaleWeek> ScaleFigures::weeks(int count) const {
    return scaleWeeks(book_.notebook(), settings().instrument, book_.today(), count);
}

Scale ScaleFigures::scale(CellAddress address) const {
    const ScaleView& view = settings().view;
    return {tonic(address.key),   view.kind, view.range, view.pattern, address.notesPerBeat,
            settings().instrument};
}

std::optional<ScalePart> ScaleFigures::part(CellAddress address) const {
    const Player player = playerOf(settings());
    return scalePart(scale(address), player.instrument->transposition, player.range);
}

bool ScaleFigures::canDrill(CellAddress address) const {
    if (settings().instrument.empty()) return false;
    return !at(address).passage.isNone() || (!book_.readOnly() && part(address).has_value());
}

Id ScaleFigures::passage(CellAddress address) {
    if (!canDrill(address)) return {};
    const Id known = at(address).passage;
    const PassageRecord* const record = book_.notebook().passage(known);
    const auto played = part(address);
    if (!played) return record == nullptr ? Id{} : known;
    if (record == nullptr) return makePassage(address, *played);
    if (!book_.readOnly()) bringUpToDate(*record, scale(address), *played);
    return known;
}

Id ScaleFigures::makePassage(CellAddress address, const ScalePart& part) {
    const Id id = book_.newId();
    const Passage made = scalePassage(id, scale(address), part, start(address));
    savePassage(book_, made);
    return id;
}

// A key that is now spelled differently than when it was created, or played in another range, looks different
// on the page: it keeps its passage, and so its record, and gets the new notes.
void ScaleFigures::bringUpToDate(const PassageRecord& record, const Scale& scale, const ScalePart& part) {
    if (record.passage.scale == scale && record.passage.notes == part.notes) return;
    Passage renamed = record.passage;
    if (renamed.title.name == textOf(*renamed.scale)) renamed.title.name = textOf(scale);
    renamed.scale = scale;
    renamed.music.bars = part.music.bars;
    renamed.music.landing = part.music.landing;
    renamed.notes = part.notes;
    savePassage(book_, renamed);
}

} // namespace piolo::practice
