// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/write/beams.h"

#include <algorithm>
#include <cstddef>

namespace piolo::score {

namespace {

/// The flags of a note value: one for an eighth. Rests count as having none, because beams end at them.
std::size_t flagsOf(const NotatedNote& note) {
    const auto* const eighth = std::ranges::find(noteValues, std::string_view("eighth"), &NoteValue::name);
    const auto* const own = std::ranges::find(noteValues, note.shape.type, &NoteValue::name);
    if (note.heads.empty() || own > eighth) return 0;
    return static_cast<std::size_t>(eighth - own) + 1;
}

/// The moments of a bar at which beams end.
std::vector<std::int64_t> edgesOf(const Meter& meter, std::int64_t ticksPerWhole) {
    std::vector<std::int64_t> edges{0};
    if (!meter.groups().empty())
        for (const int group : meter.groups())
            edges.push_back(edges.back() + group * ticksPerWhole / meter.denominator());
    else
        for (int beat = 0; beat < meter.beatsPerBar(); ++beat)
            edges.push_back(edges.back() + ticksPerWhole / fractionOf(meter.beat()).denominator *
                                               fractionOf(meter.beat()).numerator);
    return edges;
}

std::string_view wordAt(const std::vector<std::size_t>& flags, std::size_t first, std::size_t last,
                        std::size_t at, std::size_t level) {
    const bool before = at > first && flags[at - 1] > level;
    const bool after = at < last && flags[at + 1] > level;
    if (before) return after ? "continue" : "end";
    if (after) return "begin";
    return at > first ? "backward hook" : "forward hook";
}

} // namespace

std::vector<std::vector<std::string_view>> beamsOf(const NotatedBar& bar, const Meter& meter,
                                                   std::int64_t ticksPerWhole) {
    const auto edges = edgesOf(meter, ticksPerWhole);
    const auto stretchOf = [&](std::int64_t at) { return std::ranges::upper_bound(edges, at); };
    std::vector<std::size_t> flags;
    for (const NotatedNote& note : bar.notes) flags.push_back(flagsOf(note));
    std::vector<std::vector<std::string_view>> beams(bar.notes.size());
    for (std::size_t first = 0; first < flags.size(); ++first) {
        if (flags[first] == 0) continue;
        std::size_t last = first;
        while (last + 1 < flags.size() && flags[last + 1] > 0 && !bar.notes[last].tupletEnds &&
               !bar.notes[last + 1].tupletBegins &&
               stretchOf(bar.notes[last + 1].at) == stretchOf(bar.notes[first].at))
            ++last;
        if (last > first)
            for (std::size_t at = first; at <= last; ++at)
                for (std::size_t level = 0; level < flags[at]; ++level)
                    beams[at].push_back(wordAt(flags, first, last, at, level));
        first = last;
    }
    return beams;
}

} // namespace piolo::score
