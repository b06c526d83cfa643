// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_proposal.h"

#include "core/time/metronome_scale.h"

#include <algorithm>
#include <array>

namespace piolo {

namespace {

constexpr int fourth = 5;
constexpr int fifth = 7;
constexpr std::int32_t slowNotesAMinute = 240;
constexpr std::int32_t slowTempo = 60;
constexpr std::int32_t rows = Scale::mostNotesPerBeat;

/// Common practice: the final tempi on scale sheets for bands, by notes per beat.
constexpr std::array<std::int32_t, rows> usualTargets{120, 120, 112, 100, 88, 80, 72};

struct Candidate {
    std::int32_t notesPerBeat;
    int key;
};

std::vector<Candidate> cellsOf(std::span<const int> keys) {
    std::vector<Candidate> cells;
    for (std::int32_t notes = 1; notes <= rows; ++notes)
        for (const int key : keys) cells.push_back({notes, key});
    return cells;
}

/// How far the cell's best is below the best of its row, in thousandths of a BPM.
std::int32_t behind(const ScaleGrid& grid, Candidate cell) {
    std::optional<Tempo> best;
    for (int key = 0; key < keyCount; ++key) best = std::max(best, grid.at(cell.notesPerBeat, key).best);
    if (!best) return 0;
    const auto own = grid.at(cell.notesPerBeat, cell.key).best;
    return best->thousandths() - (own ? own->thousandths() : 0);
}

/// Replaces the neighbour of a proposal if the other one has a lower best.
void offer(StartProposal& proposal, const ScaleGrid& grid, Candidate neighbour, StartProposal::From from) {
    const auto best = grid.at(neighbour.notesPerBeat, neighbour.key).best;
    if (!best || (proposal.neighbourBest && *proposal.neighbourBest <= *best)) return;
    proposal.from = from;
    proposal.notesPerBeat = neighbour.notesPerBeat;
    proposal.key = neighbour.key;
    proposal.neighbourBest = best;
}

} // namespace

StartProposal startFor(const ScaleGrid& grid, std::int32_t notesPerBeat, int key) {
    StartProposal proposal;
    for (std::int32_t fewer = notesPerBeat - 1; fewer >= 1; --fewer) {
        if (!grid.at(fewer, key).best) continue;
        offer(proposal, grid, {fewer, key}, StartProposal::From::fewerNotes);
        break;
    }
    for (const int distance : {fourth, fifth})
        offer(proposal, grid, {notesPerBeat, (key + distance) % keyCount}, StartProposal::From::nextKey);
    const Tempo slow = Tempo::bpm(std::min(slowTempo, slowNotesAMinute / notesPerBeat));
    proposal.start = slow;
    if (const auto best = proposal.neighbourBest)
        proposal.start = std::max(notchBelow(notchBelow(*best)), std::min(*best, slow));
    const auto usual = usualTargets.at(static_cast<std::size_t>(notesPerBeat - 1));
    proposal.target = std::max(Tempo::bpm(usual), proposal.start);
    return proposal;
}

CellProposal nextCell(const ScaleGrid& grid, std::span<const int> keys, Date today) {
    const auto all = cellsOf(keys);
    const auto cellAt = [&](Candidate at) -> const ScaleCell& { return grid.at(at.notesPerBeat, at.key); };
    auto left = all;
    std::erase_if(left, [&](Candidate at) { return cellAt(at).lastDay == today; });
    if (left.empty()) left = all;
    const auto daysSince = [&](Candidate at) {
        const auto last = cellAt(at).lastDay;
        return last ? today.daysSince1970() - last->daysSince1970() : -1;
    };
    const auto longest = std::ranges::max_element(left, {}, daysSince);
    if (daysSince(*longest) >= staleDays)
        return {longest->notesPerBeat, longest->key, CellProposal::Why::longest, daysSince(*longest)};
    const auto played = [&](Candidate at) { return cellAt(at).lastDay.has_value(); };
    const auto unplayed = std::ranges::find_if_not(left, played);
    if (unplayed != left.end()) {
        const auto why =
            std::ranges::any_of(all, played) ? CellProposal::Why::unplayed : CellProposal::Why::first;
        return {unplayed->notesPerBeat, unplayed->key, why, 0};
    }
    const auto slowest = std::ranges::max_element(left, {}, [&](Candidate at) { return behind(grid, at); });
    return {slowest->notesPerBeat, slowest->key, CellProposal::Why::slowest, 0};
}

} // namespace piolo
