// SPDX-License-Identifier: GPL-3.0-or-later
#include "scratch_file.h"
#include "target.h"

#include "app/window/window_arguments.h"
#include "command/verbs/verb_list.h"

#include <algorithm>
#include <string>
#include <vector>

namespace piolo::fuzz {

namespace {

/// A practice folder with one passage, and a score: what the arguments of a verb can refer to.
constexpr std::string_view journalLine =
    R"({"v":1,"id":"0000000000000000000000000000d001","device":"0000000000000000000000000000b001","seq":1,)"
    R"("order":1772000000000,"at":"2026-02-25T06:13:20.000+00:00","kind":"passage",)"
    R"("passage":"0000000000000000000000000000a001","title":{"name":"Quickstep"},)"
    R"("music":{"meter":"4/4","beat":"1/4","subdivision":2,"firstBar":1,"bars":2},)"
    R"("tempi":{"start":60000,"target":90000,"floor":30000,"step":"bpm","drop":2,"climb":2,"cleanRuns":5}})"
    "\n";
constexpr std::string_view scoreText =
    R"(<score-partwise><part-list><score-part id="P"><part-name>Oboe</part-name></score-part></part-list>)"
    R"(<part id="P"><measure number="1"><attributes><divisions>1</divisions><time><beats>2</beats>)"
    R"(<beat-type>4</beat-type></time></attributes><note><rest/><duration>2</duration></note></measure>)"
    R"(</part></score-partwise>)";

/// What a verb may touch: where it reads, and a place where no file can ever be created, so that it does
/// everything except write.
struct Bounds {
    command::Verb verb;
    const char* nowhere;
    std::vector<std::string> free; ///< replace the free arguments "1", "2" and so on
};

std::string practiceFolder() {
    static const std::string folder = [] {
        scratchFile("words/journal/band.jsonl", journalLine);
        return scratchFolder() + "/words";
    }();
    return folder;
}

std::string scoreFile() {
    static const std::string file = scratchFile("words/quickstep.musicxml", scoreText);
    return file;
}

std::vector<Bounds> verbs() {
    return {{command::click_verb::verb(), "--out=/dev/null/x.wav", {}},
            {command::track_verb::verb(), "--out=/dev/null/x.wav", {}},
            {command::ladder_verb::verb(), "", {}},
            {command::bars_verb::verb(), "--out=/dev/null/x.piolo.json", {scoreFile()}},
            {command::check_verb::verb(), "", {practiceFolder(), scoreFile()}},
            {command::export_verb::verb(), "--out=/dev/null/x.piolo.json", {}},
            {command::export_verb::verb(), "--out=/dev/null/x.musicxml", {}}};
}

/// One argument per line; the bytes cannot choose where a verb writes and which folder it reads.
std::vector<std::string> wordsOf(std::string_view bytes) {
    std::vector<std::string> words;
    while (!bytes.empty()) {
        const auto end = std::min(bytes.find('\n'), bytes.size());
        const auto word = bytes.substr(0, end);
        if (!word.starts_with("--out") && !word.starts_with("--folder")) words.emplace_back(word);
        bytes.remove_prefix(std::min(end + 1, bytes.size()));
    }
    return words;
}

/// Allows no path except those that a number stands for; any other argument is too short to be a path on this
/// machine.
void bindFree(std::vector<std::string>& words, const std::vector<std::string>& free) {
    for (std::string& word : words) {
        const bool stands = word.size() == 1 && word[0] >= '1' && word[0] < '1' + std::ssize(free);
        if (stands)
            word = free[static_cast<std::size_t>(word[0] - '1')];
        else if (!free.empty())
            std::replace(word.begin(), word.end(), '/', '_');
    }
}

void runVerb(const Bounds& bounds, std::vector<std::string> words) {
    const command::Syntax syntax = bounds.verb.syntax();
    bindFree(words, bounds.free);
    if (syntax.find("--folder") != nullptr) words.insert(words.begin(), "--folder=" + practiceFolder());
    const bool takesOut = syntax.find("--out") != nullptr;
    if (takesOut) words.insert(words.begin(), bounds.nowhere);
    const auto read = command::Arguments::read(syntax, words);
    if (!read) {
        hold(static_cast<int>(read.fault().number) < 200, "what cannot be read is wrong use");
        return;
    }
    if (read->helpAsked()) return;
    const auto end = bounds.verb.run(*read);
    hold(!end || !takesOut, "nothing can be written there");
}

} // namespace

void runCommand(std::string_view bytes) {
    auto words = wordsOf(bytes);
    static_cast<void>(app::readWindowArguments(words, {{"log"}, {"system"}}));
    if (words.empty()) return;
    for (const Bounds& bounds : verbs())
        if (bounds.verb.name == words.front()) runVerb(bounds, {words.begin() + 1, words.end()});
}

} // namespace piolo::fuzz
