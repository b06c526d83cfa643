// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/arguments.h"

#include <algorithm>

namespace piolo::app {
namespace {

const OptionSpec* find(const Syntax& syntax, std::string_view name) {
    const auto found = std::ranges::find(syntax.options, name, &OptionSpec::name);
    return found == syntax.options.end() ? nullptr : &*found;
}

} // namespace

std::string Syntax::exampleOf(std::string_view option) const {
    std::string text(option);
    if (const OptionSpec* spec = find(*this, option)) text.append(" ").append(spec->example);
    return text;
}

Result<Words> Words::read(const Syntax& syntax, std::span<const std::string> words) {
    Words read(syntax);
    bool optionsEnded = false;
    while (!words.empty() && !read.help_) {
        const std::string& word = words.front();
        Done taken = done();
        if (!optionsEnded && word == "--") {
            optionsEnded = true;
        } else if (!optionsEnded && word.starts_with("--")) {
            taken = read.takeOption(words);
        } else {
            taken = read.takeFree(word);
        }
        if (!taken) return taken.fault();
        words = words.subspan(1);
    }
    return read;
}

// Leaves `rest` at the last word that belongs to the option.
Done Words::takeOption(std::span<const std::string>& rest) {
    const std::string& word = rest.front();
    help_ = word == "--help";
    if (help_) return done();
    const auto equals = word.find('=');
    const std::string name = word.substr(0, equals);
    const OptionSpec* spec = find(syntax_, name);
    if (spec == nullptr) return Fault{FaultNumber::unknownOption, {name}, {std::string(syntax_.command)}};
    if (spec->example.empty()) return takeSwitch(word, name);
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

Done Words::takeSwitch(const std::string& word, const std::string& name) {
    if (word != name) return Fault{FaultNumber::unexpectedWord, {word}, {std::string(syntax_.command)}};
    values_[name];
    return done();
}

Done Words::takeFree(const std::string& word) {
    if (free_.size() == syntax_.freeWords)
        return Fault{FaultNumber::unexpectedWord, {word}, {std::string(syntax_.command)}};
    free_.push_back(word);
    return done();
}

const std::string* Words::valueOf(std::string_view option) const {
    const auto found = values_.find(option);
    return found == values_.end() ? nullptr : &found->second;
}

} // namespace piolo::app
