// SPDX-License-Identifier: GPL-3.0-or-later
#include "target.h"

#include "app/verb_list.h"
#include "app/window_words.h"

#include <algorithm>
#include <string>
#include <vector>

namespace piolo::fuzz {

namespace {

// No file can ever be made there, so that the verb does all its work but writing.
constexpr const char* nowhere = "--out=/dev/null/x.wav";

/// One word a line; where the sound goes is not for the bytes to say.
std::vector<std::string> wordsOf(std::string_view bytes) {
    std::vector<std::string> words;
    while (!bytes.empty()) {
        const auto end = std::min(bytes.find('\n'), bytes.size());
        const auto word = bytes.substr(0, end);
        if (!word.starts_with("--out")) words.emplace_back(word);
        bytes.remove_prefix(std::min(end + 1, bytes.size()));
    }
    return words;
}

void runVerb(const app::Verb& verb, std::vector<std::string> words) {
    const auto takesOut =
        std::ranges::any_of(verb.syntax.options, [](const auto& option) { return option.name == "--out"; });
    if (takesOut) {
        words.emplace_back(nowhere);
        std::rotate(words.begin(), words.end() - 1, words.end());
    }
    const auto read = app::Words::read(verb.syntax, words);
    if (!read) {
        hold(static_cast<int>(read.fault().number) < 200, "what cannot be read is wrong use");
        return;
    }
    if (read->helpAsked()) return;
    const auto end = verb.run(*read);
    hold(!end || !takesOut, "nothing can be written there");
}

} // namespace

void runCommand(std::string_view bytes) {
    auto words = wordsOf(bytes);
    static_cast<void>(app::readWindowWords(words));
    if (words.empty()) return;
    for (const auto& verb : {app::clickVerb(), app::trackVerb(), app::ladderVerb()})
        if (verb.name == words.front()) runVerb(verb, {words.begin() + 1, words.end()});
}

} // namespace piolo::fuzz
