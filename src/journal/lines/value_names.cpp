// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/value_names.h"

#include <algorithm>
#include <array>

namespace piolo::journal {

namespace {

// Each word stands at the place of its value.
constexpr std::array<std::string_view, 3> marks{"clean", "missed", "void"};
constexpr std::array<std::string_view, 8> reasons{"",          "hand",   "stopped", "tempoChanged",
                                                  "soundLost", "newDay", "offer",   "named"};
constexpr std::array<std::string_view, 2> steps{"bpm", "notches"};
constexpr std::array<std::string_view, 3> openings{"twoRungsBelow", "asLeft", "start"};
constexpr std::array<std::string_view, std::variant_size_v<FactBody>> kinds{
    "run",     "late",     "doubt", "tempo", "back",       "passage",  "piece",
    "removal", "settings", "stage", "note",  "runThrough", "feltBeat", "picture"};

template <typename Value, std::size_t Count>
std::optional<Value> valueOf(const std::array<std::string_view, Count>& words, std::string_view word) {
    for (std::size_t i = 0; i < Count; ++i)
        if (words[i] == word && !word.empty()) return static_cast<Value>(i);
    return std::nullopt;
}

template <std::size_t Count, typename Value>
std::string_view at(const std::array<std::string_view, Count>& words, Value value) {
    const auto place = static_cast<std::size_t>(value);
    return place < Count ? words[place] : std::string_view{};
}

} // namespace

std::string_view wordOf(Mark mark) noexcept { return at(marks, mark); }
std::string_view wordOf(Reason reason) noexcept { return at(reasons, reason); }
std::string_view wordOf(RunKind kind) noexcept { return infoOf(kind).journal; }
std::string_view wordOf(StepKind step) noexcept { return at(steps, step); }
std::string_view wordOf(DayOpening opening) noexcept { return at(openings, opening); }
std::string_view wordOf(Stage stage) noexcept { return nameOf(stage); }

std::optional<Mark> markOf(std::string_view word) noexcept { return valueOf<Mark>(marks, word); }
std::optional<Reason> reasonOf(std::string_view word) noexcept { return valueOf<Reason>(reasons, word); }
std::optional<RunKind> runKindOf(std::string_view word) noexcept {
    const auto* const found = std::ranges::find(runKindTable, word, &RunKindInfo::journal);
    return word.empty() || found == runKindTable.end() ? std::nullopt : std::optional(found->kind);
}
std::optional<StepKind> stepOf(std::string_view word) noexcept { return valueOf<StepKind>(steps, word); }
std::optional<DayOpening> openingOf(std::string_view word) noexcept {
    return valueOf<DayOpening>(openings, word);
}
std::optional<Stage> stageOf(std::string_view word) noexcept { return stageNamed(word); }

std::string_view kindOf(const FactBody& body) noexcept { return kinds[body.index()]; }
std::optional<std::size_t> kindIndex(std::string_view word) noexcept {
    return valueOf<std::size_t>(kinds, word);
}

} // namespace piolo::journal
