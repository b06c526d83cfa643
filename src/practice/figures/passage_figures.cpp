// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/passage_figures.h"

#include "core/time/felt_beat.h"

#include <algorithm>

namespace piolo::practice {

std::optional<Stage> PassageFigures::suggested() const {
    if (!step.reached() || step.next == stage) return std::nullopt;
    return step.next;
}

PassageFigures figuresOf(const Notebook& notebook, const PassageRecord& record, Date today) {
    const PracticeSettings& settings = notebook.settings();
    const auto throughs = notebook.runThroughs(record.passage.title.piece);
    PassageFigures figures;
    figures.today = notebook.day(today, record.passage.id);
    figures.best = record.best;
    figures.secureDays = record.secureDays();
    figures.secureDaysNeeded = settings.secureDays;
    figures.stage = record.stage;
    figures.step = nextStep(record, throughs, settings);
    return figures;
}

std::vector<FeltBeat> feltBeats(const PassageRecord& record, Tempo tempo, std::span<const BeatUnit> beats) {
    std::vector<FeltBeat> felt;
    const BeatUnit present = record.passage.music.meter.beat();
    for (const BeatUnit beat : beats)
        if (feltIn(record.passage, record.standing.tempo, beat))
            felt.push_back({beat, nearestAt(tempo, speedRatio(present, beat))});
    return felt;
}

bool hasSeveralBests(const PassageRecord& record) {
    const auto known = std::count_if(record.bests.begin(), record.bests.end(),
                                     [](const auto& best) { return best.has_value(); });
    return known > 1 || (known == 1 && !record.bests.front());
}

} // namespace piolo::practice
