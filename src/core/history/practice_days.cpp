// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/practice_days.h"

#include <numeric>

namespace piolo {

namespace {

/// The days of a range, by date.
class Calendar {
public:
    Calendar(Date from, Date to) : first_(from.daysSince1970()) {
        for (std::int64_t day = first_; day <= to.daysSince1970(); ++day)
            days_.push_back({Date::fromDaysSince1970(day)});
    }

    void add(Date date, PracticeKind kind, std::int64_t millis) {
        PracticeDay* const day = of(date);
        if (day == nullptr) return;
        day->practised = true;
        day->millis[static_cast<std::size_t>(kind)] += millis;
    }
    void add(const Entry& entry) {
        if (entry.kind == Entry::Kind::tempo) return;
        const Date date = entry.at.date();
        add(date, practiceKind(*runKindOf(entry.kind)), entry.millis);
        PracticeDay* const day = of(date);
        if (day == nullptr || entry.kind != Entry::Kind::run || entry.mark == Mark::voided) return;
        ++day->runs;
        day->clean += entry.mark == Mark::clean ? 1 : 0;
    }
    [[nodiscard]] std::vector<PracticeDay> take() { return std::move(days_); }

private:
    PracticeDay* of(Date date) {
        const std::int64_t index = date.daysSince1970() - first_;
        const bool inside = index >= 0 && index < static_cast<std::int64_t>(days_.size());
        return inside ? &days_[static_cast<std::size_t>(index)] : nullptr;
    }

    std::int64_t first_;
    std::vector<PracticeDay> days_;
};

} // namespace

std::int64_t PracticeDay::totalMillis() const noexcept {
    return std::accumulate(millis.begin(), millis.end(), std::int64_t{0});
}

std::vector<PracticeDay> practiceDays(const Notebook& notebook, Date from, Date to) {
    Calendar calendar(from, to);
    for (const Id passage : notebook.passages(true))
        for (const Entry& entry : notebook.passage(passage)->entries) calendar.add(entry);
    for (const Piece& piece : notebook.pieces(true))
        for (const RunThrough& through : notebook.runThroughs(piece.id))
            calendar.add(through.at.date(), PracticeKind::runThrough, through.played.millis);
    return calendar.take();
}

std::vector<MissedDays> missedDays(std::span<const PracticeDay> days, Date today) {
    std::vector<MissedDays> gaps;
    bool begun = false;
    bool open = false;
    for (const PracticeDay& day : days) {
        if (day.date > today || (day.date == today && !day.practised)) break;
        begun = begun || day.practised;
        if (day.practised || !begun) {
            open = false;
            continue;
        }
        if (open)
            ++gaps.back().days;
        else
            gaps.push_back({day.date});
        open = true;
    }
    return gaps;
}

} // namespace piolo
