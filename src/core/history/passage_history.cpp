// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/passage_history.h"

#include <algorithm>
#include <utility>

namespace piolo {

namespace {

bool corrects(const FactBody& body) {
    const FactRole role = roleOf(body);
    return role == FactRole::corrects || role == FactRole::takesBack;
}

bool standBefore(const Fact* a, const Fact* b) { return standsBefore(*a, *b); }

bool givesTempi(const Fact& fact) {
    const auto* edit = std::get_if<PassageFact>(&fact.body);
    return edit != nullptr && edit->tempi.has_value();
}

/// A mark or a hand-set tempo: what the player can take back. Backs and edits are not, nor is a void run.
bool canGoBack(const FactBody& body) {
    if (const auto* run = std::get_if<RunFact>(&body)) return run->mark != Mark::voided;
    const FactRole role = roleOf(body);
    return role == FactRole::plays || role == FactRole::corrects;
}

bool happened(const Fact& fact) { return roleOf(fact.body) == FactRole::plays; }

bool isOpening(const FactBody& body) {
    const auto* tempo = std::get_if<TempoFact>(&body);
    return tempo != nullptr && tempo->reason == Reason::newDay;
}

std::vector<Entry> entriesOf(const StoredHistory& stored, std::size_t place) {
    WrongClocks clocks;
    for (const Fact& fact : stored.otherFacts())
        if (const auto* const said = std::get_if<ClockFact>(&fact.body)) clocks.add(fact, *said);
    const std::vector<Fact> facts = stored.facts(place);
    PassageHistory history(stored.passages()[place].passage, clocks);
    for (const Fact& fact : facts) history.add(fact);
    return std::move(history.record()->entries.list());
}

} // namespace

PassageHistory::PassageHistory(std::shared_ptr<const StoredHistory> stored, std::size_t place,
                               const WrongClocks& clocks)
    : passage_(stored->passages()[place].passage), clocks_(&clocks), clocksKnown_(clocks.version()),
      stored_(std::move(stored)), place_(place) {
    const PassageDigest& digest = stored_->passages()[place];
    first_ = digest.first;
    last_ = digest.last;
    summary_ = digest.record;
    if (!summary_ || digest.entries == 0) return;
    summary_->entries = Entries(digest.entries, digest.newest,
                                [history = stored_, place] { return entriesOf(*history, place); });
}

PassageDigest PassageHistory::digest() {
    fetch();
    fold();
    PassageDigest digest;
    digest.passage = passage_;
    digest.first = first_;
    digest.last = last_;
    if (!fold_) return digest;
    digest.record = fold_->record();
    digest.record->entries = {};
    digest.defining.id = facts_[defining_]->id;
    digest.defining.device = facts_[defining_]->device;
    digest.defining.seq = facts_[defining_]->seq;
    digest.defining.order = facts_[defining_]->order;
    digest.entries = fold_->record().entries.size();
    if (digest.entries > 0) digest.newest = fold_->record().entries.back();
    return digest;
}

void PassageHistory::fetch() {
    if (stored_ == nullptr) return;
    fetched_ = stored_->facts(place_);
    stored_ = nullptr;
    for (const Fact& fact : fetched_) remember(fact);
}

void PassageHistory::add(const Fact& fact) {
    fetch();
    summary_.reset();
    remember(fact);
}

void PassageHistory::remember(const Fact& fact) {
    const bool last = facts_.empty() || standsBefore(*facts_.back(), fact);
    stale_ = stale_ || !last || !fold_ || corrects(fact.body);
    widen(fact);
    facts_.push_back(&fact);
}

void PassageHistory::widen(const Fact& fact) {
    if (!happened(fact)) return;
    first_ = std::min(first_, dateOf(fact));
    last_ = std::max(last_, dateOf(fact));
}

void PassageHistory::keepDates() {
    if (clocksKnown_ == clocks_->version()) return;
    clocksKnown_ = clocks_->version();
    fetch();
    stale_ = true;
    first_ = {9999, 12, 31};
    last_ = {1, 1, 1};
    for (const Fact* fact : facts_) widen(*fact);
}

void PassageHistory::addAhead(Date date, AheadFacts& ahead) {
    keepDates();
    if (last_ <= date) return;
    fetch();
    fold();
    for (const Fact* fact : facts_)
        if (happened(*fact) && counts(*fact) && date < dateOf(*fact)) ahead.add(*fact);
}

void PassageHistory::fold() {
    keepDates();
    if (stale_) {
        if (!std::is_sorted(facts_.begin(), facts_.end(), standBefore))
            std::sort(facts_.begin(), facts_.end(), standBefore);
        corrections_ = correctionsOf(facts_);
        fold_.reset();
        folded_ = 0;
        stale_ = false;
        const auto first = std::find_if(facts_.begin(), facts_.end(), [this](const Fact* fact) {
            return givesTempi(*fact) && counts(*fact);
        });
        if (first == facts_.end()) return;
        defining_ = static_cast<std::size_t>(first - facts_.begin());
        fold_.emplace(passage_, *std::get<PassageFact>((*first)->body).tempi);
    }
    if (!fold_) return;
    for (; folded_ < facts_.size(); ++folded_)
        if (counts(*facts_[folded_]))
            fold_->add(*facts_[folded_], clocks_->at(*facts_[folded_]), corrections_);
}

PassageRecord* PassageHistory::record() {
    keepDates();
    if (stored_ != nullptr) return summary_ ? &*summary_ : nullptr;
    fold();
    return fold_ ? &fold_->record() : nullptr;
}

const Fact* PassageHistory::definition() {
    keepDates();
    if (stored_ != nullptr) return summary_ ? &stored_->passages()[place_].defining : nullptr;
    fold();
    return fold_ ? facts_[defining_] : nullptr;
}

Id PassageHistory::backTarget(std::string_view device) {
    fetch();
    fold();
    for (auto at = facts_.rbegin(); at != facts_.rend(); ++at) {
        const Fact& fact = **at;
        if (fact.device == device && canGoBack(fact.body) && counts(fact)) return fact.id;
    }
    return {};
}

bool PassageHistory::retracts(Id fact) {
    fetch();
    fold();
    return corrections_.retracted.contains(fact);
}

const FactBody* PassageHistory::body(Id fact) {
    fetch();
    const auto found =
        std::find_if(facts_.rbegin(), facts_.rend(), [fact](const Fact* its) { return its->id == fact; });
    return found == facts_.rend() ? nullptr : &(*found)->body;
}

bool PassageHistory::opened(Date date) {
    if (!reaches(date)) return false;
    fetch();
    fold();
    return std::any_of(facts_.begin(), facts_.end(), [&](const Fact* fact) {
        return happened(*fact) && dateOf(*fact) == date && (counts(*fact) || isOpening(fact->body));
    });
}

} // namespace piolo
