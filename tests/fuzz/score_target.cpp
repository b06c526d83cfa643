// SPDX-License-Identifier: GPL-3.0-or-later
#include "target.h"

#include "core/fraction_sum.h"
#include "score/excerpt.h"
#include "score/score_file.h"

#include <algorithm>

namespace piolo::fuzz {

namespace {

void pick(const score::Score& score, std::size_t part, score::Stretch stretch) {
    const auto made = score::excerpt(score, part, stretch);
    if (!made) {
        hold(static_cast<int>(made.fault().number) >= 251, "bars that are refused are refused as bars");
        return;
    }
    hold(made->music.bars >= 1 && made->music.bars <= 999, "a passage has whole bars");
    hold(made->music.subdivision >= 1 && made->music.subdivision <= 8, "a beat has one to eight pulses");
    hold(std::ranges::is_sorted(made->notes,
                                [](const Note& a, const Note& b) { return order(a.onset, b.onset) < 0; }),
         "notes stand in the order of time");
    for (const Note& note : made->notes)
        hold(note.sounding >= 0 && note.sounding <= 127, "a note has a MIDI number");
}

} // namespace

void runScore(std::string_view bytes) {
    const auto reading = score::readScore(bytes, "a.mxl");
    for (const Fault& fault : reading.faults)
        hold(fault.place.file.starts_with("a.mxl"), "a fault names its file");
    if (!reading.faults.empty()) return;
    hold(!reading.score.parts.empty(), "a good score has a part");
    for (std::size_t part = 0; part < reading.score.parts.size(); ++part) {
        const std::size_t bars = reading.score.parts[part].bars.size();
        hold(bars > 0, "a part has a bar");
        pick(reading.score, part, {0, bars - 1});
        pick(reading.score, part, {bars / 2, bars / 2});
    }
}

} // namespace piolo::fuzz
