// SPDX-License-Identifier: GPL-3.0-or-later
// The words in journal lines for marks, reasons and choices.
#pragma once

#include "core/history/fact.h"

#include <cstddef>
#include <optional>
#include <string_view>

namespace piolo::journal {

[[nodiscard]] std::string_view wordOf(Mark mark) noexcept;
/// Empty for Reason::none, which is not written.
[[nodiscard]] std::string_view wordOf(Reason reason) noexcept;
/// Empty for RunKind::run and RunKind::attempt, which have no word.
[[nodiscard]] std::string_view wordOf(RunKind kind) noexcept;
[[nodiscard]] std::string_view wordOf(StepKind step) noexcept;
[[nodiscard]] std::string_view wordOf(DayOpening opening) noexcept;
[[nodiscard]] std::string_view wordOf(Stage stage) noexcept;

[[nodiscard]] std::optional<Mark> markOf(std::string_view word) noexcept;
[[nodiscard]] std::optional<Reason> reasonOf(std::string_view word) noexcept;
[[nodiscard]] std::optional<RunKind> runKindOf(std::string_view word) noexcept;
[[nodiscard]] std::optional<StepKind> stepOf(std::string_view word) noexcept;
[[nodiscard]] std::optional<DayOpening> openingOf(std::string_view word) noexcept;
[[nodiscard]] std::optional<Stage> stageOf(std::string_view word) noexcept;

/// The word for the kind of a body: "run", "late", …
[[nodiscard]] std::string_view kindOf(const FactBody& body) noexcept;
/// The index in FactBody of the kind with that word.
[[nodiscard]] std::optional<std::size_t> kindIndex(std::string_view word) noexcept;

} // namespace piolo::journal
