// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_rhythm.h"

#include "plots/staff/staff_spans.h"

#include <algorithm>

namespace piolo::plots {

namespace {

/// A note value, and how many of a cell's units it takes.
struct Part {
    NoteValue value;
    StaffTicks units = 1;
};

std::optional<Part> single(StaffTicks units, int unitFlags, bool dots) {
    for (int power = 0; power <= unitFlags; ++power) {
        if (units == StaffTicks{1} << power) return Part{{unitFlags - power, 0}, units};
        if (dots && power > 0 && units == StaffTicks{3} << (power - 1))
            return Part{{unitFlags - power, 1}, units};
    }
    return std::nullopt;
}

/// Splits a length into tied values: the longest first on a beat, last off it.
std::vector<Part> partsOf(StaffTicks units, int unitFlags, bool dots, bool onBeat) {
    if (const auto whole = single(units, unitFlags, dots)) return {*whole};
    StaffTicks big = 1;
    while (big * 2 <= units && big < StaffTicks{1} << unitFlags) big *= 2;
    std::vector<Part> rest = partsOf(units - big, unitFlags, dots, onBeat);
    rest.insert(onBeat ? rest.begin() : rest.end(), *single(big, unitFlags, dots));
    return rest;
}

/// Writes one bar.
class BarWriter {
public:
    BarWriter(const Meter& meter, StaffRhythm& rhythm, std::size_t bar, const std::vector<StaffSpan>& spans)
        : rhythm_(rhythm), barIndex_(bar), bar_(rhythm.bars[bar]), spans_(spans) {
        const StaffTicks beat = ticksOf(fractionOf(meter.beat())).ticks;
        std::vector<StaffTicks> moments;
        for (const StaffSpan& span : spans) {
            moments.push_back(span.start - bar_.start);
            moments.push_back(span.end - bar_.start);
            // Rests may be split at every beat; notes only where they must be.
            for (StaffTicks at = 0; span.notes.empty() && at < length(); at += beat)
                if (bar_.start + at > span.start && bar_.start + at < span.end) moments.push_back(at);
        }
        cells_ = cellsOf(meter, moments);
    }

    void write() {
        bar_.first = rhythm_.events.size();
        for (const StaffSpan& span : spans_) writeSpan(span);
        bar_.endEvent = rhythm_.events.size();
        rhythm_.bars[barIndex_] = bar_;
        joinCells();
    }

private:
    [[nodiscard]] StaffTicks length() const { return bar_.end - bar_.start; }
    [[nodiscard]] std::size_t cellAt(StaffTicks at) const {
        std::size_t cell = 0;
        while (cell + 1 < cells_.size() && cells_[cell].end() <= at) ++cell;
        return cell;
    }

    void writeSpan(const StaffSpan& span) {
        StaffTicks at = std::max<StaffTicks>(0, span.start - bar_.start);
        const StaffTicks end = std::min(length(), span.end - bar_.start);
        if (span.notes.empty() && at == 0 && end == length() && !bar_.pickup) {
            add(span, at, end, {0, 0}, std::nullopt);
            rhythm_.events.back().wholeBar = true;
            return;
        }
        while (at < end) {
            const std::size_t cell = cellAt(at);
            if (const auto value = end > cells_[cell].end() ? across(span, at, end) : std::nullopt) {
                const StaffTicks to = at + ticksOf(*value);
                add(span, at, to, *value, std::nullopt);
                at = to;
                continue;
            }
            const StaffTicks to = std::min(end, cells_[cell].end());
            writeInCell(span, at, to, cell);
            at = to;
        }
    }

    /// The single value of a note or rest that extends beyond its cell, if there is one.
    [[nodiscard]] std::optional<NoteValue> across(const StaffSpan& span, StaffTicks at,
                                                  StaffTicks end) const {
        if (span.notes.empty()) return restAcross(at, end);
        const auto value = valueOf(end - at);
        const StaffCell& from = cells_[cellAt(at)];
        const StaffCell& to = cells_[cellAt(end - 1)];
        const bool untilBeat = to.end() == end;
        if (!value || (!untilBeat && (to.tuplet != 0 || !to.isPlain()))) return std::nullopt;
        if (from.start == at) return from.isPlain() || untilBeat ? value : std::nullopt;
        return isSyncopation(at, end) ? value : std::nullopt;
    }

    /// One beat long, from the middle of one beat to the middle of the next, but not across the middle of the
    /// bar.
    [[nodiscard]] bool isSyncopation(StaffTicks at, StaffTicks end) const {
        const StaffCell& from = cells_[cellAt(at)];
        const StaffCell& to = cells_[cellAt(end - 1)];
        return from.isPlain() && from.tuplet == 0 && from.length == to.length && end - at == from.length &&
               at - from.start == from.length / 2 && to.start == from.end() && 2 * to.start != length();
    }

    /// Rests longer than a beat have no dots and begin on a multiple of their length.
    [[nodiscard]] std::optional<NoteValue> restAcross(StaffTicks at, StaffTicks end) const {
        for (int flags = 0; flags <= 2; ++flags) {
            const StaffTicks rest = ticksOf(NoteValue{flags, 0});
            const StaffCell& last = cells_[cellAt(at + rest - 1)];
            const bool onBeats = cells_[cellAt(at)].start == at && last.end() == at + rest;
            if (rest <= end - at && rest < length() && at % rest == 0 && onBeats &&
                rest > cells_[cellAt(at)].length)
                return NoteValue{flags, 0};
        }
        return std::nullopt;
    }

    void writeInCell(const StaffSpan& span, StaffTicks at, StaffTicks end, std::size_t cell) {
        const StaffCell& in = cells_[cell];
        const auto place = [&in](StaffTicks moment) { return (moment - in.start + in.unit / 2) / in.unit; };
        const StaffTicks units = std::max<StaffTicks>(1, place(end) - place(at));
        const bool onGrid = (at - in.start) % in.unit == 0 && (end - in.start) % in.unit == 0;
        if (!onGrid) rhythm_.inexact.insert(rhythm_.inexact.end(), span.notes.begin(), span.notes.end());
        const bool fillsBeat = at == in.start && end == in.end();
        const bool dots = !span.notes.empty() || (fillsBeat && !in.isPlain());
        StaffTicks from = at;
        const std::vector<Part> parts = partsOf(units, in.unitFlags, dots, at == in.start);
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const StaffTicks to = i + 1 == parts.size() ? end : from + parts[i].units * in.unit;
            add(span, from, to, parts[i].value, cell);
            from = to;
        }
    }

    void add(const StaffSpan& span, StaffTicks from, StaffTicks to, NoteValue value,
             std::optional<std::size_t> cell) {
        StaffEvent event;
        event.onset = bar_.start + from;
        event.length = to - from;
        event.bar = barIndex_;
        event.value = value;
        event.notes = span.notes;
        event.begins = event.onset == span.start;
        event.ends = bar_.start + to == span.end;
        rhythm_.events.push_back(std::move(event));
        cellOf_.push_back(cell);
    }

    void joinCells() {
        std::size_t from = 0;
        while (from < cellOf_.size()) {
            std::size_t to = from + 1;
            while (to < cellOf_.size() && cellOf_[from] && cellOf_[to] == cellOf_[from]) ++to;
            if (cellOf_[from]) joinCell(cells_[*cellOf_[from]], bar_.first + from, bar_.first + to);
            from = to;
        }
    }

    [[nodiscard]] bool beamed(std::size_t event) const {
        return !rhythm_.events[event].isRest() && rhythm_.events[event].value.flags >= 3;
    }

    void joinCell(const StaffCell& cell, std::size_t first, std::size_t end) {
        bool whole = false;
        for (std::size_t from = first; from < end;) {
            std::size_t to = from;
            while (to < end && beamed(to)) ++to;
            if (to > from + 1) rhythm_.beams.push_back({from, to - 1});
            whole = whole || (from == first && to == end && to > from + 1);
            from = std::max(to, from + 1);
        }
        if (cell.tuplet > 0) rhythm_.tuplets.push_back({first, end - 1, cell.tuplet, cell.against, !whole});
    }

    StaffRhythm& rhythm_;
    std::size_t barIndex_;
    StaffBar bar_;
    const std::vector<StaffSpan>& spans_;
    std::vector<StaffCell> cells_;
    std::vector<std::optional<std::size_t>> cellOf_; // of the bar's events; nothing: longer than its cell
};

/// The spans that sound in a bar. Advances `from` to the first of them.
std::vector<StaffSpan> spansIn(const StaffBar& bar, const std::vector<StaffSpan>& spans, std::size_t& from) {
    while (from < spans.size() && spans[from].end <= bar.start) ++from;
    std::vector<StaffSpan> found;
    for (std::size_t i = from; i < spans.size() && spans[i].start < bar.end; ++i) found.push_back(spans[i]);
    return found;
}

} // namespace

StaffRhythm rhythmOf(const StaffMusic& music) {
    StaffRhythm rhythm;
    StaffSpans spans = spansOf(music);
    rhythm.bars = std::move(spans.bars);
    rhythm.inexact = std::move(spans.inexact);
    std::size_t from = 0;
    for (std::size_t bar = 0; bar < rhythm.bars.size(); ++bar) {
        const std::vector<StaffSpan> own = spansIn(rhythm.bars[bar], spans.spans, from);
        BarWriter(music.music.meter, rhythm, bar, own).write();
    }
    std::sort(rhythm.inexact.begin(), rhythm.inexact.end());
    rhythm.inexact.erase(std::unique(rhythm.inexact.begin(), rhythm.inexact.end()), rhythm.inexact.end());
    return rhythm;
}

} // namespace piolo::plots
