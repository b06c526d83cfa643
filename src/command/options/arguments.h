// SPDX-License-Identifier: GPL-3.0-or-later
// The arguments of a verb, split into options and positionals.
#pragma once

#include "command/options/option_spec.h"
#include "core/base/result.h"

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::command {

/// The arguments that a verb (or the program without a verb) accepts.
struct Syntax {
    std::string command; ///< "piolo click"
    OptionSpecs options;
    std::size_t mostPositionals = 0; ///< the most arguments that are not options

    /// Null if it is not listed.
    [[nodiscard]] const OptionSpec* find(std::string_view option) const;
    /// "--tempo 137"; only the name if the option is not listed.
    [[nodiscard]] std::string exampleOf(std::string_view option) const;
};

/// `--name value`, `--name=value`, `--help`; after `--` every argument is a positional. If an option is
/// repeated, its last value counts.
class Arguments {
public:
    /// Faults: unknownOption, missingValue, unexpectedWord. `--help` takes precedence if it comes before a
    /// fault.
    static Result<Arguments> read(const Syntax& syntax, std::span<const std::string> words);

    [[nodiscard]] bool helpAsked() const { return help_; }
    /// Null if the option was not given; empty for an option without a value.
    [[nodiscard]] const std::string* valueOf(std::string_view option) const;
    [[nodiscard]] const std::vector<std::string>& positionals() const { return positionals_; }
    [[nodiscard]] const Syntax& syntax() const { return syntax_; }

private:
    explicit Arguments(const Syntax& syntax) : syntax_(syntax) {}
    Done takeOption(std::span<const std::string>& rest);
    Done takeSwitch(const std::string& word, const std::string& name);
    Done takePositional(const std::string& word);

    Syntax syntax_;
    bool help_ = false;
    std::map<std::string, std::string, std::less<>> values_;
    std::vector<std::string> positionals_;
};

} // namespace piolo::command
