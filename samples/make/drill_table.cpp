// SPDX-License-Identifier: GPL-3.0-or-later
#include "drill_table.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace piolo::samples {

namespace {

const char* wordOf(const practice::DrilledRun& run) {
    if (run.late) return "missed (late)";
    if (run.mark == Mark::voided) return "void";
    return run.mark == Mark::missed ? "missed" : "clean";
}

std::string textOf(Standing standing) {
    return standing.tempo.text() + " with " + std::to_string(standing.streak) + " clean in a row";
}

std::string difference(const practice::DrilledRun& run, const Entry& entry) {
    const std::string name = "run " + std::to_string(run.number) + ": ";
    if (entry.tempo != run.tempo)
        return name + "played at " + run.tempo.text() + ", folded at " + entry.tempo.text();
    if (entry.mark != run.mark || entry.late != run.late) return name + "the marks differ";
    if (entry.after == run.after) return {};
    return name + "the engine stands at " + textOf(run.after) + ", the fold at " + textOf(entry.after);
}

} // namespace

std::string drillTable(const practice::VirtualDrillResult& drill) {
    std::string table = " run  tempo  mark           clean in a row  next tempo\n";
    for (const practice::DrilledRun& run : drill.runs) {
        std::array<char, 96> line{};
        std::snprintf(line.data(), line.size(), "%4llu  %5s  %-13s  %14d  %10s\n",
                      static_cast<unsigned long long>(run.number), run.tempo.text().c_str(), wordOf(run),
                      run.after.streak, run.after.tempo.text().c_str());
        table += line.data();
    }
    return table;
}

std::string disagreement(const practice::VirtualDrillResult& drill, const PassageRecord& record, Date day) {
    if (!drill.saved) return "not every fact reached the disk";
    const auto& entries = record.entries;
    const auto onDay = std::count_if(entries.begin(), entries.end(), [&](const Entry& entry) {
        return entry.kind == Entry::Kind::run && entry.at.date() == day;
    });
    if (onDay != static_cast<long>(drill.runs.size()))
        return "the engine reported " + std::to_string(drill.runs.size()) + " runs, the log has " +
               std::to_string(onDay);
    for (const practice::DrilledRun& run : drill.runs) {
        const auto entry = std::find_if(entries.begin(), entries.end(),
                                        [&](const Entry& each) { return each.id == run.fact; });
        if (entry == entries.end()) return "run " + std::to_string(run.number) + " is not in the log";
        std::string differs = difference(run, *entry);
        if (!differs.empty()) return differs;
    }
    if (drill.standing != record.standing || drill.notebook != record.standing)
        return "the engine ends at " + textOf(drill.standing) + ", the open notebook at " +
               textOf(drill.notebook) + ", the fold at " + textOf(record.standing);
    return {};
}

} // namespace piolo::samples
