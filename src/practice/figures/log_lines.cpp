// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/log_lines.h"

#include <algorithm>
#include <map>
#include <utility>

namespace piolo::practice {

namespace {

struct Played {
    const PassageRecord* record = nullptr;
    const Entry* entry = nullptr;
};

std::vector<Played> playedOn(const Notebook& notebook, const LogDay& day, const LogFilter& filter) {
    std::vector<Played> played;
    for (const LogSpan& span : day.spans) {
        const PassageRecord* const record = notebook.passage(span.passage);
        if (record == nullptr) continue;
        const std::size_t end = std::min(span.first + span.count, record->entries.size());
        for (std::size_t index = span.first; index < end; ++index)
            if (filter.takes(record->entries[index].kind))
                played.push_back({record, &record->entries[index]});
    }
    std::stable_sort(played.begin(), played.end(), [](const Played& a, const Played& b) {
        return a.entry->at.utcMillis < b.entry->at.utcMillis;
    });
    return played;
}

bool moved(const Entry& entry) { return entry.fullStreak || entry.after.tempo != entry.tempo; }

bool playedAlike(const Entry& a, const Entry& b) {
    return a.articulation == b.articulation && a.rhythm == b.rhythm && a.entered == b.entered;
}

bool joins(const LogLine& line, const Played& next) {
    if (line.through) return false;
    const Entry& last = *line.entries.back();
    return line.record == next.record && last.kind == next.entry->kind && last.tempo == next.entry->tempo &&
           playedAlike(last, *next.entry) && last.kind != Entry::Kind::tempo &&
           (last.kind != Entry::Kind::run || !moved(last));
}

std::vector<LogLine> throughsOn(const Notebook& notebook, const LogDay& day) {
    std::vector<LogLine> lines;
    std::map<Id, std::vector<RunThrough>> throughs;
    for (const LogThrough& its : day.throughs) {
        auto [found, isNew] = throughs.try_emplace(its.piece);
        if (isNew) found->second = notebook.runThroughs(its.piece);
        const auto piece = notebook.piece(its.piece);
        if (piece && its.index < found->second.size())
            lines.push_back({nullptr, {}, found->second[its.index], piece->name});
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const LogLine& a, const LogLine& b) { return a.at().utcMillis < b.at().utcMillis; });
    return lines;
}

bool isOpening(const LogLine& line) {
    return !line.through && line.entries.front()->reason == Reason::newDay &&
           line.entries.front()->kind == Entry::Kind::tempo;
}

/// The tempo that `line` sets was set again before anything was played.
bool isReplaced(const LogLine& line, const LogLine& next) {
    const auto sets = [](const LogLine& its) {
        return !its.through && its.entries.front()->kind == Entry::Kind::tempo;
    };
    return sets(line) && sets(next) && line.record == next.record;
}

void leaveOutWhatSaysNothing(std::vector<LogLine>& lines) {
    bool opened = false;
    std::vector<LogLine> left;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const bool again = isOpening(lines[i]) && opened;
        opened = opened || isOpening(lines[i]);
        if (again || (i + 1 < lines.size() && isReplaced(lines[i], lines[i + 1]))) continue;
        left.push_back(std::move(lines[i]));
    }
    lines = std::move(left);
}

} // namespace

int LogLine::count(Mark mark) const {
    if (through || entries.front()->kind == Entry::Kind::tempo) return 0;
    return static_cast<int>(std::count_if(entries.begin(), entries.end(),
                                          [mark](const Entry* entry) { return entry->mark == mark; }));
}

std::vector<LogLine> linesOf(const Notebook& notebook, const LogDay& day, const LogFilter& filter) {
    std::vector<LogLine> lines;
    const std::vector<LogLine> throughs = throughsOn(notebook, day);
    auto through = throughs.begin();
    for (const Played& next : playedOn(notebook, day, filter)) {
        for (; through != throughs.end() && through->at().utcMillis < next.entry->at.utcMillis; ++through)
            lines.push_back(*through);
        if (lines.empty() || !joins(lines.back(), next)) lines.push_back({next.record, {}, {}, {}});
        lines.back().entries.push_back(next.entry);
    }
    lines.insert(lines.end(), through, throughs.end());
    if (filter.kind != Entry::Kind::tempo) leaveOutWhatSaysNothing(lines);
    return lines;
}

LogDayFigures figuresOf(const std::vector<LogLine>& lines) {
    LogDayFigures figures;
    for (const LogLine& line : lines) {
        figures.clean += line.count(Mark::clean);
        figures.runs += line.count(Mark::clean) + line.count(Mark::missed);
        for (const Entry* entry : line.entries) figures.millis += entry->millis;
        if (line.through) figures.millis += line.through->played.millis;
    }
    return figures;
}

} // namespace piolo::practice
