// SPDX-License-Identifier: GPL-3.0-or-later
// Converts the values of options and keeps the first fault, so that a verb can read all its options and then
// check once.
#pragma once

#include "command/options/arguments.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace piolo::command {

/// A range of integers, both limits inclusive.
struct WholeRange {
    std::int64_t least = 0;
    std::int64_t most = 0;
};

/// After a fault, every function returns some value in range; check fault() before using them. A missing
/// option without a fallback is the fault missingOption.
class OptionReader {
public:
    explicit OptionReader(const Arguments& arguments) : arguments_(arguments) {}

    [[nodiscard]] const std::optional<Fault>& fault() const { return fault_; }
    /// Keeps `fault` unless there already is one; an empty location becomes `option`.
    void fail(Fault fault, std::string_view option);

    [[nodiscard]] bool isGiven(std::string_view option) const {
        return arguments_.valueOf(option) != nullptr;
    }
    std::string text(std::string_view option);
    std::string text(std::string_view option, std::string_view fallback);
    /// Faults: badTempo.
    Tempo tempo(std::string_view option);
    Tempo tempo(std::string_view option, Tempo fallback);
    /// Faults: badNumber, badRange.
    std::int64_t whole(std::string_view option, WholeRange range, std::optional<std::int64_t> fallback = {});
    /// The index of the value among `choices`, of which the first is the fallback. Fault badChoice.
    std::size_t choice(std::string_view option, std::initializer_list<std::string_view> choices);
    std::size_t choice(std::string_view option, std::span<const std::string_view> choices);
    /// Fault badOrder if `lower` is above `upper`. The sentence names the options without dashes.
    void inOrder(std::string_view lowerOption, Tempo lower, std::string_view upperOption, Tempo upper);
    /// Fault badFileKind unless the path ends with one of `kinds` (".wav"), in any case.
    std::size_t fileKind(std::string_view option, const std::string& path,
                         std::initializer_list<std::string_view> kinds);

private:
    const std::string* given(std::string_view option);

    const Arguments& arguments_;
    std::optional<Fault> fault_;
};

} // namespace piolo::command
