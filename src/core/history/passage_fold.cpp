// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/passage_fold.h"

#include "core/time/felt_beat.h"

#include <algorithm>
#include <utility>

namespace piolo {

namespace {

/// The mark as recorded, or as the player corrected it.
Mark markSaid(Id id, Mark recorded, const Corrections& corrections) {
    const auto corrected = corrections.marks.find(id);
    return corrected == corrections.marks.end() ? recorded : corrected->second;
}

/// The mark as it counts now: a doubt makes any run void, a late miss makes a clean one missed.
Mark markNow(Id id, Mark said, const Corrections& corrections) {
    if (corrections.doubted.contains(id)) return Mark::voided;
    if (said == Mark::clean && corrections.missed.contains(id)) return Mark::missed;
    return said;
}

/// The ids of the corrections, and of everything that a back names.
struct Backs {
    std::unordered_set<Id> corrections;
    std::unordered_set<Id> named;

    explicit Backs(std::span<const Fact* const> facts) {
        for (const Fact* fact : facts) {
            if (const auto* back = std::get_if<BackFact>(&fact->body)) named.insert(back->retracts);
            if (std::holds_alternative<CorrectionFact>(fact->body)) corrections.insert(fact->id);
        }
    }
    /// The correction, if it counts and does not name another one.
    [[nodiscard]] const CorrectionFact* correction(const Fact& fact) const {
        const auto* const correction = std::get_if<CorrectionFact>(&fact.body);
        if (correction == nullptr || named.contains(fact.id)) return nullptr;
        return corrections.contains(correction->corrects) ? nullptr : correction;
    }
};

std::unordered_set<Id> retractedIn(std::span<const Fact* const> facts, const Backs& backs) {
    if (backs.corrections.empty()) return backs.named;
    std::unordered_set<Id> retracted;
    for (const Fact* fact : facts) {
        if (const auto* back = std::get_if<BackFact>(&fact->body)) retracted.insert(back->retracts);
        if (const auto* correction = backs.correction(*fact)) retracted.erase(correction->corrects);
    }
    return retracted;
}

void correct(const CorrectionFact& correction, Corrections& corrections) {
    if (!correction.mark) return;
    corrections.marks[correction.corrects] = *correction.mark;
    corrections.missed.erase(correction.corrects);
    corrections.doubted.erase(correction.corrects);
}

} // namespace

Corrections correctionsOf(std::span<const Fact* const> facts) {
    const Backs backs(facts);
    Corrections corrections;
    corrections.retracted = retractedIn(facts, backs);
    for (const Fact* fact : facts) {
        if (corrections.retracted.contains(fact->id)) continue;
        if (const auto* late = std::get_if<LateMissFact>(&fact->body)) corrections.missed.insert(late->run);
        if (const auto* doubt = std::get_if<DoubtFact>(&fact->body))
            corrections.doubted.insert(doubt->runs.begin(), doubt->runs.end());
        if (const auto* correction = backs.correction(*fact)) correct(*correction, corrections);
    }
    return corrections;
}

PassageFold::PassageFold(Id passage, const Tempi& tempi) {
    record_.passage.id = passage;
    record_.passage.tempi = tempi;
    record_.standing = handSet(tempi.start);
}

void PassageFold::add(const Fact& fact, const Timestamp& at, const Corrections& corrections) {
    const auto entry = [&] {
        Entry made;
        made.id = fact.id;
        made.at = at;
        return made;
    };
    const auto gathered = [](const auto& /*correction*/) {};
    std::visit(ForKinds{[&](const RunFact& played) { run(entry(), played, corrections); },
                        [&](const TempoFact& set) { tempo(entry(), set); },
                        [&](const PassageFact& edited) { edit(edited); },
                        [&](const StageFact& said) { record_.stage = said.stage; },
                        [&](const NoteFact& written) { note(written); },
                        [&](const FeltBeatFact& felt) { feel(felt); },
                        [&](const PictureFact& shown) { record_.picture = shown.picture; },
                        [&](const LateMissFact& late) { gathered(late); },
                        [&](const DoubtFact& doubt) { gathered(doubt); },
                        [&](const BackFact& back) { gathered(back); },
                        [&](const CorrectionFact& correction) { gathered(correction); },
                        [](const NotOfAPassage auto& /*fact*/) {}},
               fact.body);
}

void PassageFold::turnTo(Date date) {
    if (record_.lastDay != date) record_.standing = handSet(record_.standing.tempo);
    record_.lastDay = date;
}

void PassageFold::run(Entry entry, const RunFact& run, const Corrections& corrections) {
    turnTo(entry.at.date());
    entry.kind = entryKind(run.kind);
    entry.tempo = run.tempo;
    const Mark said = markSaid(entry.id, run.mark, corrections);
    entry.mark = markNow(entry.id, said, corrections);
    entry.millis = run.millis;
    entry.late = entry.mark == Mark::missed && said == Mark::clean;
    entry.corrected = said != run.mark;
    entry.before = record_.standing;
    // As if it had been marked so from the beginning: it was not cut short, and if clean, not missed
    // anywhere.
    if (!entry.corrected) entry.reason = run.reason;
    if (!entry.corrected || said == Mark::missed) entry.spots = run.spots;
    entry.articulation = record_.passage.manner.articulation;
    entry.rhythm = record_.passage.manner.rhythm;
    entry.entered = run.entered;
    const Mark moving = run.kind == RunKind::run ? entry.mark : Mark::voided;
    const Outcome outcome = afterRun(entry.before, run.tempo, moving, record_.passage.tempi.rule);
    entry.after = outcome.after;
    entry.fullStreak = outcome.fullStreak;
    moved_ = moved_ || moving != Mark::voided;
    remember(std::move(entry), outcome);
}

void PassageFold::remember(Entry entry, const Outcome& outcome) {
    record_.standing = outcome.after;
    if (outcome.fullStreak) {
        const auto raise = [&](std::optional<Tempo>& best) {
            best = std::max(best.value_or(entry.tempo), entry.tempo);
        };
        raise(record_.best);
        raise(record_.bests[static_cast<std::size_t>(entry.articulation)]);
        record_.lastFullStreak = entry.tempo;
    }
    if (outcome.secure) record_.secures.push_back({entry.at.date(), entry.tempo});
    record_.entries.push_back(std::move(entry));
}

void PassageFold::tempo(Entry entry, const TempoFact& tempo) {
    turnTo(entry.at.date());
    entry.kind = Entry::Kind::tempo;
    entry.tempo = tempo.tempo;
    entry.reason = tempo.reason;
    entry.before = record_.standing;
    entry.after = handSet(tempo.tempo);
    record_.standing = entry.after;
    record_.entries.push_back(std::move(entry));
    moved_ = true;
}

void PassageFold::note(const NoteFact& note) {
    if (note.text.empty())
        record_.notes.erase(note.about);
    else
        record_.notes[note.about] = note.text;
}

void PassageFold::feel(const FeltBeatFact& felt) {
    const auto converted = feltIn(record_.passage, record_.standing.tempo, felt.beat);
    if (!converted) return;
    const SpeedRatio ratio = speedRatio(record_.passage.music.meter.beat(), felt.beat);
    record_.passage = converted->passage;
    record_.standing.tempo = converted->tempo;
    const auto convert = [&](auto& tempo) { tempo = nearestAt(tempo, ratio); };
    const auto convertKnown = [&](std::optional<Tempo>& tempo) {
        if (tempo) convert(*tempo);
    };
    convertKnown(record_.best);
    convertKnown(record_.lastFullStreak);
    for (auto& best : record_.bests) convertKnown(best);
    for (Secure& secure : record_.secures) convert(secure.tempo);
    for (Entry& entry : record_.entries.list()) {
        convert(entry.tempo);
        convert(entry.before.tempo);
        convert(entry.after.tempo);
        for (Spot& spot : entry.spots) spot = spotAt(spot, ratio);
    }
}

void PassageFold::markEdited(const PassageFact& edit) {
    forEachGroup([&](const auto& group) {
        if (!(edit.*group.given)) return;
        bool& imported = imported_.*group.mark;
        imported = imported || edit.imported;
        record_.editedHere.*group.mark = imported && !edit.imported;
    });
}

void PassageFold::edit(const PassageFact& edit) {
    markEdited(edit);
    Passage& passage = record_.passage;
    if (edit.manner && !edit.manner->soundsLike(passage.manner))
        record_.standing = handSet(record_.standing.tempo);
    forEachGroup([&](const auto& group) {
        if (const auto& given = edit.*group.given) passage.*group.value = *given;
    });
    if (!edit.tempi) return;
    const Rule& rule = passage.tempi.rule;
    record_.standing = moved_ ? edited(record_.standing, rule) : handSet(passage.tempi.start);
    std::erase_if(record_.secures, [&](const Secure& secure) { return secure.tempo < rule.target; });
}

} // namespace piolo
