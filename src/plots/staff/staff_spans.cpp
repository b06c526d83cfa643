// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_spans.h"

#include <algorithm>
#include <numeric>

namespace piolo::plots {

namespace {

std::vector<std::size_t> inOrder(const std::vector<Note>& notes) {
    std::vector<std::size_t> order(std::min(notes.size(), Passage::mostNotes));
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return ticksOf(notes[a].onset).ticks < ticksOf(notes[b].onset).ticks;
    });
    return order;
}

/// Chords, each as long as its longest note.
std::vector<StaffSpan> soundsOf(const std::vector<Note>& notes, StaffTicks most) {
    std::vector<StaffSpan> sounds;
    for (const std::size_t index : inOrder(notes)) {
        const StaffTicks start = ticksOf(notes[index].onset).ticks;
        const StaffTicks end = std::max(start + 1, start + ticksOf(notes[index].length).ticks);
        if (start >= most) continue;
        if (sounds.empty() || sounds.back().start != start) sounds.push_back({start, end, {}});
        sounds.back().end = std::min(most, std::max(sounds.back().end, end));
        sounds.back().notes.push_back(index);
    }
    for (std::size_t i = 1; i < sounds.size(); ++i)
        sounds[i - 1].end = std::min(sounds[i - 1].end, sounds[i].start);
    return sounds;
}

std::vector<StaffSpan> withSilence(std::vector<StaffSpan> sounds, StaffTicks end) {
    std::vector<StaffSpan> spans;
    StaffTicks at = 0;
    for (StaffSpan& sound : sounds) {
        if (sound.start > at) spans.push_back({at, sound.start, {}});
        at = sound.end;
        spans.push_back(std::move(sound));
    }
    if (end > at) spans.push_back({at, end, {}});
    return spans;
}

StaffTicks barLength(const Music& music) {
    return ticksToWhole / music.meter.denominator() * music.meter.numerator();
}

std::vector<StaffBar> barsOf(const Music& music, StaffTicks pickup, StaffTicks end) {
    std::vector<StaffBar> bars;
    const StaffTicks length = barLength(music);
    const auto add = [&bars](int number, bool isPickup, StaffTicks from, StaffTicks to) {
        StaffBar bar;
        bar.number = number;
        bar.pickup = isPickup;
        bar.start = from;
        bar.end = to;
        bars.push_back(bar);
    };
    if (pickup > 0) add(music.firstBar - 1, true, pickup - length, pickup);
    int number = music.firstBar;
    for (StaffTicks at = pickup; at < end; at += length) add(number++, false, at, at + length);
    return bars;
}

StaffTicks roundedUp(StaffTicks ticks, StaffTicks unit) { return (ticks + unit - 1) / unit * unit; }

/// A passage of known length may have its landing note in one extra bar, which is left open after its last
/// beat. A passage of unknown length ends with the bar of its last note.
StaffTicks endOf(const Music& music, StaffTicks pickup, StaffTicks last) {
    const StaffTicks length = barLength(music);
    if (music.bars == 0) return pickup + std::max(length, roundedUp(last - pickup, length));
    const StaffTicks named = pickup + std::clamp(music.bars, 0, Music::mostBars) * length;
    if (last <= named) return named;
    return named + roundedUp(last - named, ticksOf(fractionOf(music.meter.beat())).ticks);
}

bool isExact(const Note& note, const StaffSpan& span) {
    const StaffMoment onset = ticksOf(note.onset);
    const StaffMoment length = ticksOf(note.length);
    return onset.exact && length.exact && onset.ticks + length.ticks == span.end;
}

} // namespace

StaffSpans spansOf(const StaffMusic& music) {
    StaffSpans made;
    const StaffTicks length = barLength(music.music);
    const StaffTicks pickup = std::min(ticksOf(music.music.pickup).ticks, length - 1);
    auto sounds = soundsOf(music.notes, pickup + Music::mostBars * length);
    const StaffTicks end = endOf(music.music, pickup, sounds.empty() ? 0 : sounds.back().end);
    made.bars = barsOf(music.music, pickup, end);
    made.spans = withSilence(std::move(sounds), end);
    std::vector<bool> drawn(music.notes.size(), false);
    for (const StaffSpan& span : made.spans)
        for (const std::size_t note : span.notes) drawn[note] = isExact(music.notes[note], span);
    for (std::size_t i = 0; i < drawn.size(); ++i)
        if (!drawn[i]) made.inexact.push_back(i);
    return made;
}

} // namespace piolo::plots
