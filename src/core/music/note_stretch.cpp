// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/music/note_stretch.h"

#include "core/time/fraction_sum.h"

namespace piolo {

namespace {

bool isBefore(Fraction a, Fraction b) { return order(a, b) == std::weak_ordering::less; }

/// The moment at which the full bar with that number begins, from the beginning of the passage.
Fraction beginOf(std::int32_t bar, const Music& music) {
    const std::int32_t before = bar - music.firstBar;
    const Fraction bars{before * music.meter.numerator(), music.meter.denominator()};
    return sum(music.pickup, bars).value_or(bars);
}

} // namespace

std::vector<Note> notesOf(const BuildUpPart& part, const Music& whole, const std::vector<Note>& notes) {
    const Fraction from = part.firstBar == whole.firstBar ? Fraction{} : beginOf(part.firstBar, whole);
    const Fraction to = beginOf(part.firstBar + part.bars, whole);
    std::vector<Note> found;
    for (const Note& note : notes) {
        const bool lands = order(note.onset, to) == std::weak_ordering::equivalent;
        if (isBefore(note.onset, from) || (!isBefore(note.onset, to) && !lands)) continue;
        found.push_back(note);
        found.back().onset = difference(note.onset, from).value_or(Fraction{});
    }
    return found;
}

bool sameBars(const Music& a, const Music& b) noexcept {
    return a.firstBar == b.firstBar && a.bars == b.bars && a.meter.numerator() == b.meter.numerator() &&
           a.meter.denominator() == b.meter.denominator() &&
           order(a.pickup, b.pickup) == std::weak_ordering::equivalent;
}

} // namespace piolo
