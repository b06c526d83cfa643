// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/notebook.h"

#include "core/base/id_index.h"
#include "core/history/passage_history.h"
#include "core/history/stored_history.h"
#include "core/passage/piece_shelf.h"
#include "core/rule/day_opening.h"

#include <algorithm>
#include <deque>
#include <unordered_map>

namespace piolo {

namespace {

bool isNewDate(const std::vector<Secure>& secures, std::size_t index) {
    for (std::size_t earlier = 0; earlier < index; ++earlier)
        if (secures[earlier].day == secures[index].day) return false;
    return true;
}

void count(const Entry& entry, DayFigures& figures) {
    figures.millis += entry.millis;
    if (entry.kind != Entry::Kind::run) return;
    if (entry.mark == Mark::voided) {
        ++figures.voided;
        return;
    }
    ++figures.runs;
    if (entry.mark != Mark::clean) return;
    ++figures.clean;
    figures.best = figures.best ? std::max(*figures.best, entry.tempo) : entry.tempo;
}

void count(const PassageRecord* record, Date date, DayFigures& figures) {
    if (record == nullptr) return;
    for (const Entry& entry : record->entries)
        if (entry.at.date() == date) count(entry, figures);
}

bool played(const PassageRecord& record) {
    return std::any_of(record.entries.begin(), record.entries.end(),
                       [](const Entry& entry) { return entry.kind != Entry::Kind::tempo; });
}

} // namespace

int PassageRecord::secureDays() const {
    int days = 0;
    for (std::size_t index = 0; index < secures.size(); ++index) days += isNewDate(secures, index) ? 1 : 0;
    return days;
}

struct Notebook::Body {
    std::shared_ptr<const StoredHistory> stored; ///< may be none
    IdIndex known;                               ///< of the others
    std::deque<Fact> own;                        ///< what passages look at: where facts never move
    std::vector<std::vector<Fact>> whole;        ///< the same, as they were given
    std::unordered_map<Id, PassageHistory> passages;
    PieceShelf shelf;
    Removals removals;
    RunThroughs runThroughs;
    WrongClocks clocks;
    Newest newestSettings;
    PracticeSettings settings;

    PassageHistory* history(Id id) {
        const auto found = passages.find(id);
        return found == passages.end() ? nullptr : &found->second;
    }
    PassageRecord* record(Id id) {
        PassageHistory* const history = this->history(id);
        PassageRecord* const record = history == nullptr ? nullptr : history->record();
        if (record != nullptr) record->removed = removals.removed(id);
        return record;
    }
    bool isNew(Id fact) { return !(stored && stored->knows(fact)) && known.keep(fact, 0).second; }
    void open(const std::shared_ptr<const StoredHistory>& history);
    void keep(Fact&& fact);
    /// True when a passage looks at the fact from now on, which then must stay where it is.
    bool add(const Fact& fact);
};

void Notebook::Body::open(const std::shared_ptr<const StoredHistory>& history) {
    stored = history;
    const auto& digests = stored->passages();
    // First the clock facts: the digests are what those make of them.
    for (Fact& fact : stored->otherFacts()) keep(std::move(fact));
    passages.reserve(digests.size());
    for (std::size_t place = 0; place < digests.size(); ++place)
        passages.try_emplace(digests[place].passage, stored, place, clocks);
}

void Notebook::Body::keep(Fact&& fact) {
    own.push_back(std::move(fact));
    if (!add(own.back())) own.pop_back();
}

bool Notebook::Body::add(const Fact& fact) {
    return std::visit(ForKinds{[&](const PieceFact& piece) {
                                   shelf.add(fact, piece);
                                   return false;
                               },
                               [&](const RemovalFact& removal) {
                                   removals.add(fact, removal);
                                   return false;
                               },
                               [&](const SettingsFact& change) {
                                   if (newestSettings.offer(fact)) settings = change.settings;
                                   return false;
                               },
                               [&](const RunThroughFact& through) {
                                   runThroughs.add(fact, through);
                                   return false;
                               },
                               [&](const ClockFact& said) {
                                   clocks.add(fact, said);
                                   return false;
                               },
                               [&](const OfAPassage auto& ofAPassage) {
                                   const Id passage = ofAPassage.passage;
                                   passages.try_emplace(passage, passage, clocks).first->second.add(fact);
                                   return true;
                               }},
                      fact.body);
}

Notebook::Notebook() : body_(std::make_unique<Body>()) {}
Notebook::Notebook(const std::shared_ptr<const StoredHistory>& stored) : Notebook() {
    if (stored) body_->open(stored);
}
Notebook::~Notebook() = default;
Notebook::Notebook(Notebook&&) noexcept = default;
Notebook& Notebook::operator=(Notebook&&) noexcept = default;

bool Notebook::add(Fact fact) {
    if (!body_->isNew(fact.id)) return false;
    body_->keep(std::move(fact));
    return true;
}

void Notebook::addAll(std::vector<Fact>&& facts) {
    const std::vector<Fact>& kept = body_->whole.emplace_back(std::move(facts));
    body_->known.reserve(body_->known.size() + kept.size());
    for (const Fact& fact : kept)
        if (body_->isNew(fact.id)) body_->add(fact);
}

std::size_t Notebook::factCount() const {
    return body_->known.size() + (body_->stored ? body_->stored->factCount() : 0);
}

std::size_t Notebook::foldAhead(std::size_t part, std::size_t of) {
    std::size_t index = 0;
    std::size_t folded = 0;
    for (auto& [id, history] : body_->passages) {
        if (index++ % of != part || body_->removals.removed(id) || history.isFolded()) continue;
        history.record();
        ++folded;
    }
    return folded;
}

std::vector<Piece> Notebook::pieces(bool removedToo) const {
    std::vector<Piece> pieces = body_->shelf.pieces();
    if (!removedToo)
        std::erase_if(pieces, [&](const Piece& piece) { return body_->removals.removed(piece.id); });
    return pieces;
}

std::optional<Piece> Notebook::piece(Id id) const { return body_->shelf.piece(id); }

std::vector<Id> Notebook::passages(bool removedToo) const {
    std::vector<std::pair<const Fact*, Id>> made;
    for (auto& [id, history] : body_->passages) {
        // Asked in this order, passages that nobody sees any more are never folded.
        if (!removedToo && body_->removals.removed(id)) continue;
        if (const Fact* const definition = history.definition()) made.emplace_back(definition, id);
    }
    std::sort(made.begin(), made.end(),
              [](const auto& a, const auto& b) { return standsBefore(*a.first, *b.first); });
    std::vector<Id> ids;
    ids.reserve(made.size());
    for (const auto& [fact, id] : made) ids.push_back(id);
    return ids;
}

const PassageRecord* Notebook::passage(Id id) const { return body_->record(id); }

std::vector<Id> Notebook::find(std::string_view idOrTitle) const {
    if (const auto id = Id::parse(idOrTitle); id && body_->record(*id) != nullptr) return {*id};
    std::vector<Id> ids = passages();
    std::erase_if(ids, [&](Id id) { return body_->record(id)->passage.title.name != idOrTitle; });
    return ids;
}

const PracticeSettings& Notebook::settings() const { return body_->settings; }

// Backs and corrections of run-throughs name the piece where others name their passage.
std::vector<RunThrough> Notebook::runThroughs(Id piece) const {
    std::vector<RunThrough> throughs = body_->runThroughs.of(piece, body_->clocks);
    PassageHistory* const said = throughs.empty() ? nullptr : body_->history(piece);
    if (said != nullptr)
        std::erase_if(throughs, [&](const RunThrough& through) { return said->retracts(through.id); });
    return throughs;
}

Id Notebook::backTarget(Id passage, std::string_view device) const {
    PassageHistory* const history = body_->history(passage);
    return history == nullptr ? Id{} : history->backTarget(device);
}

const FactBody* Notebook::body(Id passage, Id fact) const {
    PassageHistory* const history = body_->history(passage);
    return history == nullptr ? nullptr : history->body(fact);
}

DayFigures Notebook::day(Date date, Id passage) const {
    DayFigures figures;
    if (!passage.isNone()) {
        count(body_->record(passage), date, figures);
        return figures;
    }
    for (auto& [id, history] : body_->passages)
        if (history.reaches(date)) count(history.record(), date, figures);
    return figures;
}

std::vector<DatedAhead> Notebook::datedAfter(Date date) const {
    AheadFacts ahead;
    for (auto& [id, history] : body_->passages) history.addAhead(date, ahead);
    body_->runThroughs.addAhead(date, body_->clocks, ahead);
    return std::move(ahead).groups();
}

std::optional<Tempo> Notebook::opening(Id passage, Date date) const {
    const PassageRecord* const record = body_->record(passage);
    if (record == nullptr || !played(*record) || body_->history(passage)->opened(date)) return std::nullopt;
    const Tempi& tempi = record->passage.tempi;
    const Tempo* const full = record->lastFullStreak ? &*record->lastFullStreak : nullptr;
    const Tempo opens =
        dayOpens(body_->settings.dayOpening, record->standing.tempo, full, tempi.start, tempi.rule);
    if (opens == record->standing.tempo) return std::nullopt;
    return opens;
}

Notebook fold(std::span<const Fact> facts) {
    Notebook notebook;
    for (const Fact& fact : facts) notebook.add(fact);
    return notebook;
}

Notebook fold(std::vector<Fact>&& facts) {
    Notebook notebook;
    notebook.addAll(std::move(facts));
    return notebook;
}

} // namespace piolo
