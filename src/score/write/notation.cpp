// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/notation.h"

#include "core/time/fraction_sum.h"
#include "score/read/limits.h"
#include "score/write/bar_segments.h"
#include "score/write/tuplet_spans.h"
#include "score/write/value_split.h"

#include <algorithm>
#include <compare>
#include <numeric>

namespace piolo::score {

namespace {

constexpr std::int64_t mostTicks = std::int64_t{4} * mostDivisions;
constexpr std::int32_t mostActual = 999;
/// A factor that keeps ticks of the shortest tuplets whole. A fraction's numerator has 31 bits: with
/// mostTicks and this factor, its ticks fit into 63.
constexpr std::int64_t halves = 1024;

Fault faultAt(FaultNumber number, std::int32_t bar) { return {number, {}, {std::to_string(bar)}}; }

std::int64_t ticksOf(Fraction length, std::int64_t whole) {
    return whole / length.denominator * length.numerator;
}

class Notating {
public:
    Notating(const Music& music, const std::vector<Note>& notes) : music_(music), notes_(notes) {}

    Result<Notation> notation() {
        if (auto fault = makeGrid()) return *fault;
        if (auto fault = makeChords()) return *fault;
        Notation made{grid_.whole, {}};
        for (std::int64_t at = lead_; at < end();) {
            const std::int64_t barEnd = (at / grid_.bar + 1) * grid_.bar;
            auto bar = barOf({at, barEnd});
            if (!bar) return bar.fault();
            made.bars.push_back(std::move(bar.value()));
            at = barEnd;
        }
        return made;
    }

private:
    [[nodiscard]] bool hasPickUp() const { return !music_.pickup.isZero(); }
    [[nodiscard]] std::int32_t numberAt(std::int64_t at) const {
        return music_.firstBar + static_cast<std::int32_t>(at / grid_.bar) - (hasPickUp() ? 1 : 0);
    }

    std::optional<Fault> makeGrid() {
        const Fraction bar{music_.meter.numerator(), music_.meter.denominator()};
        const Fraction beat = fractionOf(music_.meter.beat());
        grid_.whole = std::lcm(std::lcm(bar.denominator, beat.denominator), 4);
        if (!takes(music_.pickup)) return faultAt(FaultNumber::notesTooFine, music_.firstBar);
        for (const Note& note : notes_)
            if (note.length.isZero() || !takes(note.onset) || !takes(note.length))
                return faultAt(FaultNumber::notesTooFine, numberOf(note, bar));
        grid_.whole *= halves;
        grid_.bar = ticksOf(bar, grid_.whole);
        grid_.beat = ticksOf(beat, grid_.whole);
        lead_ = hasPickUp() ? grid_.bar - ticksOf(music_.pickup, grid_.whole) : 0;
        return std::nullopt;
    }

    /// Works before the grid exists.
    [[nodiscard]] std::int32_t numberOf(const Note& note, Fraction bar) const {
        const auto after = difference(note.onset, music_.pickup);
        if (!after) return music_.firstBar - (hasPickUp() ? 1 : 0);
        const Fraction bars = ratio(*after, bar);
        return music_.firstBar + bars.numerator / bars.denominator;
    }

    bool takes(Fraction fraction) {
        const std::int64_t finer = std::lcm(grid_.whole, std::int64_t{fraction.reduced().denominator});
        if (finer > mostTicks) return false;
        grid_.whole = finer;
        return true;
    }

    std::optional<Fault> makeChords() {
        for (const Note& note : notes_) {
            const std::int64_t begin = lead_ + ticksOf(note.onset.reduced(), grid_.whole);
            if (begin >= latestEnd()) return faultAt(FaultNumber::notesOutside, numberAt(latestEnd()));
            const TickRange range{begin, begin + ticksOf(note.length.reduced(), grid_.whole)};
            if (range.end > latestEnd()) return faultAt(FaultNumber::notesOutside, numberAt(begin));
            const bool together = !chords_.empty() && chords_.back().range.begin == range.begin &&
                                  chords_.back().range.end == range.end;
            if (!together && !chords_.empty() && range.begin < chords_.back().range.end)
                return faultAt(FaultNumber::notesOverlap, numberAt(begin));
            if (!together) chords_.push_back({{}, range});
            chords_.back().heads.push_back(&note);
        }
        return std::nullopt;
    }

    [[nodiscard]] std::int64_t wholeBars(std::int64_t bars) const {
        return (bars + (hasPickUp() ? 1 : 0)) * grid_.bar;
    }
    /// The end of the one bar allowed after the last.
    [[nodiscard]] std::int64_t latestEnd() const {
        return wholeBars((music_.bars > 0 ? music_.bars : Music::mostBars) + 1);
    }
    [[nodiscard]] std::int64_t end() const {
        return std::max(wholeBars(std::max(music_.bars, 1)), chords_.empty() ? 0 : chords_.back().range.end);
    }

    Result<NotatedBar> barOf(TickRange range) {
        NotatedBar bar{numberAt(range.begin), range.length() < grid_.bar, {}};
        const auto pieces = barSegments(chords_, range, grid_);
        std::vector<TickRange> ranges;
        for (const BarSegment& piece : pieces) ranges.push_back(piece.range);
        const auto spans = tupletSpans(ranges, grid_);
        auto span = spans.begin();
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            while (span != spans.end() && span->last < i) ++span;
            const bool isInside = span != spans.end() && span->first <= i;
            if (isInside ? !addInSpan(pieces[i], *span, bar) : !addPlain(pieces[i], bar))
                return faultAt(FaultNumber::notesTooFine, bar.number);
            if (isInside && span->first == i) firstOf(pieces[i], bar).tupletBegins = true;
            if (isInside && span->last == i) bar.notes.back().tupletEnds = true;
        }
        return bar;
    }

    static NotatedNote& firstOf(const BarSegment& piece, NotatedBar& bar) {
        return *std::ranges::find(bar.notes, piece.range.begin, &NotatedNote::at);
    }

    bool addPlain(const BarSegment& piece, NotatedBar& bar) const {
        if (piece.heads.empty() && piece.range.length() == grid_.bar) {
            NotatedNote rest;
            rest.fillsBar = true;
            rest.ticks = grid_.bar;
            bar.notes.push_back(rest);
            return true;
        }
        return add(piece, piece.range, TupletSpan{}, bar);
    }

    /// As if the tuplet's units were plain notes.
    bool addInSpan(const BarSegment& piece, const TupletSpan& span, NotatedBar& bar) const {
        if (span.actual > mostActual || span.normal > mostActual) return false;
        if (span.value * span.normal != span.range.length()) return false;
        const auto scaled = [&](std::int64_t at) { return (at - span.range.begin) / span.unit * span.value; };
        return add(piece, {scaled(piece.range.begin), scaled(piece.range.end)}, span, bar);
    }

    bool add(const BarSegment& piece, const TickRange& scaled, const TupletSpan& span,
             NotatedBar& bar) const {
        const auto one = oneShape(scaled, grid_);
        const bool isOne = one && (!piece.heads.empty() || span.actual != span.normal);
        const auto values = isOne ? std::vector<ShapedTicks>{{*one, scaled.length()}} : split(scaled, grid_);
        if (!values) return false;
        const auto normal = oneShape({0, span.value}, grid_);
        std::int64_t at = piece.range.begin;
        for (const ShapedTicks& value : *values) {
            const std::int64_t ticks = value.ticks / span.value * span.unit;
            const bool isSound = !piece.heads.empty();
            bar.notes.push_back({.heads = piece.heads,
                                 .shape = value.shape,
                                 .at = at,
                                 .ticks = ticks,
                                 .fromBefore = isSound && (piece.fromBefore || at > piece.range.begin),
                                 .goesOn = isSound && (piece.goesOn || at + ticks < piece.range.end),
                                 .actual = span.actual,
                                 .normal = span.normal,
                                 .normalType = normal ? normal->type : std::string_view()});
            at += ticks;
        }
        return true;
    }

    const Music& music_;
    const std::vector<Note>& notes_;
    TickGrid grid_;
    std::int64_t lead_ = 0; ///< from the first bar line to the first moment
    std::vector<Chord> chords_;
};

} // namespace

Result<Notation> notationOf(const Music& music, const std::vector<Note>& notes) {
    return Notating(music, notes).notation();
}

} // namespace piolo::score
