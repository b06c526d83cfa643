// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/arguments.h"

#include <algorithm>

namespace piolo::command {
const OptionSpec* Syntax::find(std::string_view option) const {
    const auto found = std::ranges::find(options, option, &OptionSpec::name);
    return found == options.end() ? nullptr : &*found;
}

std::string Syntax::exampleOf(std::string_view option) const {
    std::string text(option);
    if (const OptionSpec* spec = find(option)) text.append(" ").append(spec->example);
    return text;
}

Result<Arguments> Arguments::read(const Syntax& syntax, std::span<const std::string> words) {
    Arguments read(syntax);
    bool optionsEnded = false;
    while (!words.empty() && !read.help_) {
        const std::string& word = words.front();
        Done taken = done();
        if (!optionsEnded && word == "--") {
            optionsEnded = true;
        } else if (!optionsEnded && word.starts_with("--")) {
            taken = read.takeOption(words);
        } else {
            taken = read.takePositional(word);
        }
        if (!taken) return taken.fault();
        words = words.subspan(1);
    }
    return read;
}

// Leaves `rest` at the last argument that belongs to the option.
Done Arguments::takeOption(std::span<const std::string>& rest) {
    const std::string& word = rest.front();
    help_ = word == "--help";
    if (help_) return done();
    const auto equals = word.find('=');
    const std::string name = word.substr(0, equals);
    const OptionSpec* spec = syntax_.find(name);
    if (spec == nullptr) return Fault{FaultNumber::unknownOption, {name}, {syntax_.command}};
    if (spec->value.empty()) return takeSwitch(word, name);
    if (equals != std::string::npos) {
        values_[name] = word.substr(equals + 1);
        return done();
    }
    if (rest.size() < 2 || rest[1].starts_with("--"))
        return Fault{FaultNumber::missingValue, {name}, {syntax_.exampleOf(name)}};
    rest = rest.subspan(1);
    values_[name] = rest.front();
    return done();
}

Done Arguments::takeSwitch(const std::string& word, const std::string& name) {
    if (word != name) return Fault{FaultNumber::unexpectedWord, {word}, {syntax_.command}};
    values_[name];
    return done();
}

Done Arguments::takePositional(const std::string& word) {
    if (positionals_.size() == syntax_.mostPositionals)
        return Fault{FaultNumber::unexpectedWord, {word}, {syntax_.command}};
    positionals_.push_back(word);
    return done();
}

const std::string* Arguments::valueOf(std::string_view option) const {
    const auto found = values_.find(option);
    return found == values_.end() ? nullptr : &found->second;
}

} // namespace piolo::command
