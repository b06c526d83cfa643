// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/taken_back.h"

#include <algorithm>

namespace piolo::practice {

namespace {

using What = TakenBack::What;

/// What happens to an entry; nothing if there is no such entry.
std::optional<TakenBack> ofEntry(const Notebook& notebook, Id passage, Id id, What what, FactBody putsBack) {
    const PassageRecord* const record = notebook.passage(passage);
    if (record == nullptr) return std::nullopt;
    const auto entry = std::find_if(record->entries.rbegin(), record->entries.rend(),
                                    [id](const Entry& its) { return its.id == id; });
    if (entry == record->entries.rend()) return std::nullopt;
    TakenBack taken{what, entry->tempo, entry->mark, {}, 1, std::move(putsBack)};
    if (entry->mark == Mark::missed && !entry->spots.empty()) taken.spot = entry->spots.front();
    return taken;
}

/// A correction that only puts a run back is that run; one that changes a mark is recorded again.
std::optional<TakenBack> ofCorrection(const Notebook& notebook, const CorrectionFact& correction) {
    const Id run = correction.corrects;
    if (correction.mark) return ofEntry(notebook, correction.passage, run, What::mark, correction);
    return takenBack(notebook, correction.passage, run);
}

} // namespace

std::optional<TakenBack> takenBack(const Notebook& notebook, Id subject, Id fact) {
    const CorrectionFact putsBack{subject, fact, {}};
    const FactBody* const body = notebook.body(subject, fact);
    if (body == nullptr) {
        const auto throughs = notebook.runThroughs(subject);
        const bool known = std::any_of(throughs.begin(), throughs.end(),
                                       [fact](const RunThrough& its) { return its.id == fact; });
        if (!known) return std::nullopt;
        return TakenBack{What::runThrough, Tempo::bpm(60), Mark::clean, {}, 1, putsBack};
    }
    if (std::holds_alternative<RunFact>(*body)) return ofEntry(notebook, subject, fact, What::run, putsBack);
    if (std::holds_alternative<TempoFact>(*body))
        return ofEntry(notebook, subject, fact, What::tempo, putsBack);
    if (const auto* late = std::get_if<LateMissFact>(body))
        return ofEntry(notebook, subject, late->run, What::lateMiss, putsBack);
    if (const auto* doubt = std::get_if<DoubtFact>(body))
        return TakenBack{What::doubt, Tempo::bpm(60), Mark::voided, {}, doubt->runs.size(), putsBack};
    if (const auto* correction = std::get_if<CorrectionFact>(body))
        return ofCorrection(notebook, *correction);
    return std::nullopt;
}

} // namespace piolo::practice
