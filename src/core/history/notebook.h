// SPDX-License-Identifier: GPL-3.0-or-later
// The notebook: the fold of the journal's facts. The same facts in any order of arrival give the same
// notebook; duplicates (by id) count once.
#pragma once

#include "core/history/day_figures.h"
#include "core/history/fact.h"
#include "core/history/passage_record.h"
#include "core/history/run_through.h"
#include "core/history/wrong_clocks.h"
#include "core/passage/group_marks.h"

#include <memory>
#include <span>
#include <string_view>
#include <vector>

namespace piolo {

class StoredHistory;

/// Grows by facts; belongs to one thread. A fact that is the last of its passage costs one step at the next
/// reading; one that arrives late or corrects (back, late miss, doubt, correction) costs a refold of that
/// passage.
///
/// How a passage is folded, where the rule itself is silent:
/// - The first fact with tempi sets the standing to its start. An edit moves the standing to the new start as
///   long as no run counted and no tempo was set (void runs and those apart from the rule do not count);
///   after that it only clamps.
/// - Tempi hold from the beginning: runs that stand before the first tempi are folded by those.
/// - The first run or tempo of another local date than the last one starts the streak at 0, runs of
///   every kind and void ones too.
/// - A doubt makes its runs void, also those that were missed; a late miss makes only clean ones missed. A
///   correction's mark replaces what stands before it in the order. Every run keeps the tempo at which it was
///   played, whatever becomes of the marks before it.
/// - Of backs and corrections that name a fact, the last one in the order decides whether it counts.
/// - Another articulation or rhythm starts the streak at 0.
/// - A felt beat converts all that is known of the passage's tempi, entries included (core/felt_beat.h).
/// - Backs, late misses, doubts and corrections work inside their own passage.
/// - Clock facts move the dates of what a device recorded, and with them days and openings, but not its
/// order.
class Notebook {
public:
    Notebook();
    /// Of the facts that are stored there, to which others can be added: none of them is looked at before it
    /// is needed.
    explicit Notebook(const std::shared_ptr<const StoredHistory>& stored);
    ~Notebook();
    Notebook(Notebook&&) noexcept;
    Notebook& operator=(Notebook&&) noexcept;

    /// False when a fact of that id is there already (nothing changes).
    bool add(Fact fact);
    /// Adds all of them, and keeps them where they are: nothing is copied.
    void addAll(std::vector<Fact>&& facts);
    [[nodiscard]] std::size_t factCount() const;
    /// Folds every `of`-th passage from `part` on (part < of) now, not when it is first asked for. Only this
    /// may run on several threads at once, each with another part of the same number, and while nothing else
    /// does. Removed passages are left alone. How many passages there were to fold.
    std::size_t foldAhead(std::size_t part, std::size_t of);

    /// Pieces in the order of their names, then ids; removed ones only when asked for.
    [[nodiscard]] std::vector<Piece> pieces(bool removedToo = false) const;
    /// The piece of that id, also a removed one; nothing when none is known.
    [[nodiscard]] std::optional<Piece> piece(Id id) const;
    /// Ids of the passages in the order in which they were made; removed ones only when asked for.
    [[nodiscard]] std::vector<Id> passages(bool removedToo = false) const;
    /// Nothing for an unknown id, and for a passage of which no defining fact (with tempi) is known. The
    /// pointer is good until the next add().
    [[nodiscard]] const PassageRecord* passage(Id id) const;
    /// The passage of that id (32 digits), also a removed one; else those of exactly that title, as
    /// passages().
    [[nodiscard]] std::vector<Id> find(std::string_view idOrTitle) const;
    [[nodiscard]] const PracticeSettings& settings() const;
    /// Of a piece, oldest first; those taken back are left out.
    [[nodiscard]] std::vector<RunThrough> runThroughs(Id piece) const;

    /// What `back` on `device` would retract: the newest unretracted mark (a run of any kind that is not
    /// void, a late miss, a doubt, a correction) or hand-set tempo of that passage made on that device. None:
    /// nothing left.
    [[nodiscard]] Id backTarget(Id passage, std::string_view device) const;
    /// The content of a fact about that passage; null if it is not known. Valid until the next add().
    [[nodiscard]] const FactBody* body(Id passage, Id fact) const;
    /// The figures of one day; `passage` none: all passages.
    [[nodiscard]] DayFigures day(Date date, Id passage) const;
    /// What was played or set after `date`, by device. Folds passages only if there is any.
    [[nodiscard]] std::vector<DatedAhead> datedAfter(Date date) const;
    /// The tempo at which `date` opens this passage, or nothing when it was played or opened on that date
    /// already (also when that opening was taken back), was never played, or is at that tempo anyway.
    [[nodiscard]] std::optional<Tempo> opening(Id passage, Date date) const;

private:
    struct Body;
    std::unique_ptr<Body> body_;
};

/// A notebook of all these facts.
[[nodiscard]] Notebook fold(std::span<const Fact> facts);
/// The same, without a copy of each.
[[nodiscard]] Notebook fold(std::vector<Fact>&& facts);

} // namespace piolo
