// SPDX-License-Identifier: GPL-3.0-or-later
// An option: how it is written on the command line, and its help.
#pragma once

#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::command {

struct OptionSpec {
    std::string_view name;    ///< "--tempo"
    std::string_view value;   ///< placeholder for its value in the help, "N"; "": takes no value
    std::string_view example; ///< a value for use in faults: "137"
    std::string help;         ///< what it does, in one or more lines
    std::string heading = {}; ///< a line above it in the help
};

using OptionSpecs = std::vector<OptionSpec>;

/// All lists, one after the other.
[[nodiscard]] OptionSpecs joined(std::initializer_list<OptionSpecs> lists);

/// --folder DIR, as in all verbs that read a practice folder.
[[nodiscard]] OptionSpec folderOption();

/// "a, b or c".
[[nodiscard]] std::string joinedWithOr(std::span<const std::string_view> words);

} // namespace piolo::command
