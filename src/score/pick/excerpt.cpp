// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/pick/excerpt.h"

#include "core/base/digits.h"
#include "core/time/fraction_sum.h"
#include "score/pick/crossing.h"
#include "score/pick/steady_division.h"
#include "score/pick/tempo_in_force.h"

#include <algorithm>
#include <array>
#include <compare>

namespace piolo::score {

namespace {

constexpr std::size_t mostWholeBars = 999;
constexpr std::int32_t mostInFraction = 999'999'999;

/// The beat printed in the tempo mark; otherwise the meter's usual beat; otherwise any in which the bar can
/// be counted.
Result<Meter> meterOf(const Bar& bar, const TempoMark* mark) {
    const TimeSignature& time = bar.time;
    const Fault refusal{FaultNumber::meterNotCounted, {}, {bar.number, time.text()}};
    if (!time.counted) return refusal;
    if (const auto beat = mark != nullptr ? printedBeat(*mark) : std::nullopt)
        if (auto meter = Meter::make(time.beats, time.beatType, *beat, time.groups)) return meter;
    TimeSignature plain = time;
    plain.groups.clear();
    const auto usual = Meter::parse(plain.text(), "", "");
    if (usual && time.groups.empty()) return *usual;
    if (usual)
        if (auto meter = Meter::make(time.beats, time.beatType, usual->beat(), time.groups)) return meter;
    for (const BeatUnit beat : {BeatUnit::half, BeatUnit::quarter, BeatUnit::eighth})
        if (auto meter = Meter::make(time.beats, time.beatType, beat, time.groups)) return meter;
    return refusal;
}

/// True for a pick-up: a first bar shorter than its meter, at the beginning of the part or marked as
/// implicit.
bool isPickUp(const Part& part, std::size_t bar) {
    const Bar& it = part.bars[bar];
    return (bar == 0 || it.implicit) && !it.length.isZero() && std::is_lt(order(it.length, it.time.length()));
}

/// A bar with missing notes counts as whole: the rest of it stays empty.
std::optional<Fault> notWhole(const Bar& bar) {
    const auto against = order(bar.length, bar.time.length());
    if (std::is_eq(against) || (std::is_lt(against) && !bar.implicit)) return std::nullopt;
    return Fault{FaultNumber::barNotWhole, {}, {bar.number, bar.length.text(), bar.time.text()}};
}

struct Line {
    std::int32_t staff = 1;
    std::int32_t voice = 0;
};

/// Voice 1 of staff 1 if it has notes, otherwise the first voice that has any.
Line lineOf(const Part& part, Stretch stretch) {
    const auto one = std::ranges::find(part.voices, "1") - part.voices.begin();
    std::optional<Line> first;
    for (std::size_t bar = stretch.first; bar <= stretch.last; ++bar)
        for (const ScoreNote& note : part.bars[bar].notes) {
            if (!note.written || note.grace) continue;
            if (note.staff == 1 && note.voice == one) return {note.staff, note.voice};
            if (!first) first = Line{note.staff, note.voice};
        }
    return first.value_or(Line{});
}

/// Collects the notes of each bar and checks that the bars are whole.
class Gathering {
public:
    Gathering(const Part& part, Stretch stretch)
        : part_(part), stretch_(stretch), line_(lineOf(part, stretch)) {}

    std::optional<Fault> gather(Excerpt& into) {
        const bool pickUp = isPickUp(part_, stretch_.first);
        const std::size_t bars = stretch_.last - stretch_.first + (pickUp ? 0 : 1);
        const Bar& first = part_.bars[stretch_.first];
        if (bars < 1 || bars > mostWholeBars)
            return Fault{FaultNumber::noWholeBar, {}, {first.number, part_.bars[stretch_.last].number}};
        if (pickUp) into.music.pickup = first.length;
        into.music.bars = static_cast<std::int32_t>(bars);
        into.music.firstBar = printedNumber(stretch_.first + (pickUp ? 1 : 0));
        return gatherBars(into, pickUp);
    }

private:
    std::optional<Fault> gatherBars(Excerpt& into, bool pickUp) {
        Fraction begin;
        for (std::size_t at = stretch_.first; at <= stretch_.last; ++at) {
            const Bar& bar = part_.bars[at];
            const bool isUp = pickUp && at == stretch_.first;
            if (auto fault = isUp ? std::nullopt : notWhole(bar)) return fault;
            const auto end = sum(begin, isUp ? bar.length : bar.time.length());
            if (!end || !takeNotes(bar, begin, into))
                return Fault{FaultNumber::barNotWhole, {}, {bar.number, bar.length.text(), bar.time.text()}};
            begin = *end;
        }
        return std::nullopt;
    }

    bool takeNotes(const Bar& bar, Fraction begin, Excerpt& into) const {
        for (const ScoreNote& note : bar.notes) {
            if (!note.written || note.grace || note.staff != line_.staff || note.voice != line_.voice)
                continue;
            const auto onset = sum(begin, note.onset);
            if (!onset) return false;
            into.notes.push_back({*note.written, note.sounding, *onset, note.length, note.tiedBefore,
                                  note.tiedAfter, note.articulation});
        }
        return true;
    }

    [[nodiscard]] std::int32_t printedNumber(std::size_t bar) const {
        const auto number = digitsOf(part_.bars[bar].number, 1, 4);
        return static_cast<std::int32_t>(number ? static_cast<std::size_t>(*number)
                                                : std::min<std::size_t>(bar + 1, 9999));
    }

    const Part& part_;
    Stretch stretch_;
    Line line_;
};

/// A pulse grid begins on a beat of a whole bar, so onsets are measured from where the pick-up's bar would
/// begin.
std::vector<Fraction> onsetsFromBeat(const Excerpt& from) {
    std::vector<Fraction> onsets;
    const Fraction bar{from.music.meter.numerator(), from.music.meter.denominator()};
    const bool hasPickUp = !from.music.pickup.isZero();
    const Fraction lead = hasPickUp ? difference(bar, from.music.pickup).value_or(Fraction{}) : Fraction{};
    for (const Note& note : from.notes)
        if (const auto onset = note.tiedBefore ? std::nullopt : sum(lead, note.onset))
            onsets.push_back(*onset);
    return onsets;
}

bool canBeKept(Fraction fraction) {
    return fraction.numerator <= mostInFraction && fraction.denominator <= mostInFraction;
}

std::optional<Fault> refusal(const Score& score, const Part& part, Stretch stretch) {
    const auto round = goesRound(part, stretch);
    return round ? round : changes(score, part, stretch);
}

} // namespace

std::optional<std::size_t> barNumbered(const Part& part, std::string_view number, std::size_t from) {
    for (std::size_t bar = from; bar < part.bars.size(); ++bar)
        if (part.bars[bar].number == number) return bar;
    return std::nullopt;
}

Result<Excerpt> excerpt(const Score& score, std::size_t part, Stretch stretch) {
    const Part& from = score.parts[part];
    if (auto fault = refusal(score, from, stretch)) return *fault;
    const TempoMark* mark = markInForce(score, stretch.first);
    const auto meter = meterOf(from.bars[stretch.first], mark);
    if (!meter) return meter.fault();
    Excerpt made;
    made.music.meter = *meter;
    if (auto fault = Gathering(from, stretch).gather(made)) return *fault;
    const Division division = steadyDivision(onsetsFromBeat(made), fractionOf(meter->beat()));
    made.music.subdivision = division.pulses;
    made.onGrid = division.holdsAll;
    if (mark != nullptr) made.tempo = tempoIn(*mark, meter->beat());
    std::ranges::stable_sort(
        made.notes, [](const Note& a, const Note& b) { return std::is_lt(order(a.onset, b.onset)); });
    return made;
}

std::vector<Note> notesKept(const Excerpt& made) {
    std::vector<Note> kept = made.notes;
    std::erase_if(kept, [](const Note& note) { return note.length.isZero(); });
    const bool all = std::ranges::all_of(
        kept, [](const Note& note) { return canBeKept(note.onset) && canBeKept(note.length); });
    if (kept.size() > Passage::mostNotes || !all) kept.clear();
    return kept;
}

Tempi tempiOf(const Excerpt& made) {
    constexpr std::int64_t wholeBeat = 1000;
    Tempi tempi;
    if (!made.tempo) return tempi;
    tempi.rule.target = *made.tempo;
    tempi.start = std::min(*made.tempo,
                           Tempo::clampedThousandths(made.tempo->thousandths() / 2 / wholeBeat * wholeBeat));
    tempi.rule.floor = std::min(tempi.rule.floor, tempi.start);
    return tempi;
}

} // namespace piolo::score
