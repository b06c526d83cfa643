// SPDX-License-Identifier: GPL-3.0-or-later
#include "same_notebook.h"

#include "random_folder.h"

#include <algorithm>
#include <doctest/doctest.h>

namespace piolo::test {

namespace {

bool same(const DayFigures& a, const DayFigures& b) {
    return a.runs == b.runs && a.clean == b.clean && a.voided == b.voided && a.best == b.best &&
           a.millis == b.millis;
}

bool sameThroughs(const Notebook& a, const Notebook& b, Id piece) {
    const auto x = a.runThroughs(piece);
    const auto y = b.runThroughs(piece);
    return std::equal(x.begin(), x.end(), y.begin(), y.end(),
                      [](const RunThrough& one, const RunThrough& two) {
                          return one.id == two.id && one.at == two.at && one.played == two.played;
                      });
}

/// In this order, a passage with stored facts answers from its digest for as long as possible.
bool samePassage(const Notebook& a, const Notebook& b, Id id) {
    const PassageRecord* const x = a.passage(id);
    const PassageRecord* const y = b.passage(id);
    if (x == nullptr || y == nullptr) return x == y;
    if (x->entries.size() != y->entries.size()) return false;
    if (!x->entries.empty() && !(x->entries.back() == y->entries.back())) return false;
    if (!(*x == *y)) return false;
    std::vector<Date> days{*Date::parse("2026-03-01"), *Date::parse("2031-01-01")};
    for (const Entry& entry : x->entries) days.push_back(entry.at.date());
    const bool sameDays = std::all_of(days.begin(), days.end(), [&](Date day) {
        return a.opening(id, day) == b.opening(id, day) && same(a.day(day, id), b.day(day, id)) &&
               same(a.day(day, {}), b.day(day, {}));
    });
    return sameDays && a.find(x->passage.title.name) == b.find(x->passage.title.name) &&
           a.backTarget(id, testDevice) == b.backTarget(id, testDevice) &&
           a.backTarget(id, pitDevice) == b.backTarget(id, pitDevice) && *a.passage(id) == *b.passage(id);
}

} // namespace

bool sameNotebook(const Notebook& a, const Notebook& b) {
    const auto ids = a.passages(true);
    const auto pieces = a.pieces(true);
    return a.factCount() == b.factCount() && a.settings() == b.settings() && ids == b.passages(true) &&
           a.passages() == b.passages() && pieces == b.pieces(true) && a.pieces() == b.pieces() &&
           std::all_of(pieces.begin(), pieces.end(),
                       [&](const Piece& piece) { return sameThroughs(a, b, piece.id); }) &&
           std::all_of(ids.begin(), ids.end(), [&](Id id) { return samePassage(a, b, id); });
}

bool sameReading(const journal::FolderContents& a, const journal::FolderContents& b) {
    return a.faults == b.faults && a.highest.order == b.highest.order &&
           a.highest.ownSeq == b.highest.ownSeq && a.unclosed == b.unclosed;
}

Notebook notebookOf(journal::FolderContents contents) {
    Notebook notebook(contents.stored);
    notebook.addAll(std::move(contents.facts));
    return notebook;
}

} // namespace piolo::test
