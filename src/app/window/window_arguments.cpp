// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window_arguments.h"

#include "app/verbs/picture_size.h"

#include <algorithm>

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {{"--folder", "~/spring-concert"},
                                  {"--drill", "\"Letter C, bars 41 to 48\""},
                                  {"--screen", "log"},
                                  {"--language", "de"},
                                  {"--shot", "window.png"},
                                  {"--size", "1280x800"}};

const std::initializer_list<std::string_view> screens{"passages", "drill",    "scales",
                                                      "log",      "settings", "help"};

const std::initializer_list<std::string_view> languages{"system", "en", "de", "it"};

std::string asked(OptionReader& in, const char* option, std::initializer_list<std::string_view> words) {
    const std::size_t choice = in.choice(option, words);
    return in.isGiven(option) ? std::string(words.begin()[choice]) : std::string();
}

} // namespace

Result<WindowWords> readWindowWords(std::span<const std::string> words) {
    WindowWords read;
    if (!words.empty() && words.front() == "--version") {
        read.version = true;
        return read;
    }
    if (!words.empty() && !words.front().starts_with("-"))
        return Fault{FaultNumber::unknownVerb, {words.front()}, {}};
    const auto sorted = Words::read({"piolo", options}, words);
    if (!sorted) return sorted.fault();
    read.help = sorted->helpAsked();
    OptionReader in(*sorted);
    const PictureSize size = readSize(in, {});
    read.options = {in.text("--folder", ""),
                    in.text("--drill", ""),
                    asked(in, "--screen", screens),
                    asked(in, "--language", languages),
                    in.text("--shot", ""),
                    size.width,
                    size.height};
    if (in.fault() && !read.help) return *in.fault();
    return read;
}

} // namespace piolo::app
