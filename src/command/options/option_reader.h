// SPDX-License-Identifier: GPL-3.0-or-later
// Turns the words of options into values and keeps the first fault, so that a verb reads all its options in
// one go and asks once.
#pragma once

#include "command/options/arguments.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace piolo::command {

/// Ends of a range of whole numbers, both inside.
struct WholeRange {
    std::int64_t least = 0;
    std::int64_t most = 0;
};

/// After a fault every reading gives some value in range; look at fault() before use. An option without a
/// fallback that was not given is the fault missingOption.
class OptionReader {
public:
    explicit OptionReader(const Arguments& arguments) : arguments_(arguments) {}

    [[nodiscard]] const std::optional<Fault>& fault() const { return fault_; }
    /// Keeps `fault` unless there is one already; an empty place becomes `option`.
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
    /// The place of the word among `choices`, the first being the fallback. Fault badChoice.
    std::size_t choice(std::string_view option, std::initializer_list<std::string_view> choices);
    std::size_t choice(std::string_view option, std::span<const std::string_view> choices);
    /// Fault badOrder when `lower` is above `upper`. The options are named without their dashes in the
    /// sentence.
    void inOrder(std::string_view lowerOption, Tempo lower, std::string_view upperOption, Tempo upper);
    /// Fault badFileKind unless the path ends in one of `kinds` (".wav"), in any case of letters.
    std::size_t fileKind(std::string_view option, const std::string& path,
                         std::initializer_list<std::string_view> kinds);

private:
    const std::string* given(std::string_view option);

    const Arguments& arguments_;
    std::optional<Fault> fault_;
};

} // namespace piolo::command
