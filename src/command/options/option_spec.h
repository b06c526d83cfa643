// SPDX-License-Identifier: GPL-3.0-or-later
// An option: what is written on the command line, and what the help says about it.
#pragma once

#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::command {

struct OptionSpec {
    std::string_view name;    ///< "--tempo"
    std::string_view value;   ///< stands for its value in the help, "N"; "": takes no value
    std::string_view example; ///< a value, for faults: "137"
    std::string help;         ///< what it does, in one line or more
    std::string heading = {}; ///< a line above it in the help
};

using OptionSpecs = std::vector<OptionSpec>;

/// All of them, list after list.
[[nodiscard]] OptionSpecs joined(std::initializer_list<OptionSpecs> lists);

/// --folder DIR, as the verbs have it that read a practice folder.
[[nodiscard]] OptionSpec folderOption();

/// "a, b or c".
[[nodiscard]] std::string joinedWithOr(std::span<const std::string_view> words);

} // namespace piolo::command
