// SPDX-License-Identifier: GPL-3.0-or-later
// The words after a verb, sorted into options and free words.
#pragma once

#include "core/base/result.h"

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::app {

/// An option, with an example of its value for the faults. One without an example takes no value.
struct OptionSpec {
    std::string_view name;    ///< "--tempo"
    std::string_view example; ///< "137"; "": takes no value
};

/// What may follow a verb (or the program's own name, without a verb).
struct Syntax {
    std::string_view command; ///< "piolo click"
    std::span<const OptionSpec> options;
    std::size_t freeWords = 0; ///< at most so many words that are no options

    /// "--tempo 137"; just the name for an option that is not listed.
    [[nodiscard]] std::string exampleOf(std::string_view option) const;
};

/// `--name value`, `--name=value`, `--help`; after `--` all words are free. A repeated option's last value
/// counts.
class Words {
public:
    /// Faults: unknownOption, missingValue, unexpectedWord. `--help` anywhere before a fault wins.
    static Result<Words> read(const Syntax& syntax, std::span<const std::string> words);

    [[nodiscard]] bool helpAsked() const { return help_; }
    /// Nothing when the option was not given; empty for one that takes no value.
    [[nodiscard]] const std::string* valueOf(std::string_view option) const;
    [[nodiscard]] const std::vector<std::string>& freeWords() const { return free_; }
    [[nodiscard]] const Syntax& syntax() const { return syntax_; }

private:
    explicit Words(const Syntax& syntax) : syntax_(syntax) {}
    Done takeOption(std::span<const std::string>& rest);
    Done takeSwitch(const std::string& word, const std::string& name);
    Done takeFree(const std::string& word);

    Syntax syntax_;
    bool help_ = false;
    std::map<std::string, std::string, std::less<>> values_;
    std::vector<std::string> free_;
};

} // namespace piolo::app
