// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window_arguments.h"

#include "command/options/picture_size.h"

#include <algorithm>

namespace piolo::app {
namespace {

std::string asked(command::OptionReader& in, const char* option, const std::vector<std::string_view>& words) {
    const std::size_t choice = in.choice(option, words);
    return in.isGiven(option) ? std::string(words[choice]) : std::string();
}

} // namespace

command::OptionSpecs windowOptions(const WindowChoices& choices) {
    return {
        {"--folder", "DIR", "~/spring-concert", "the practice folder; created if it does not exist"},
        {"--drill", "PASSAGE", "\"Letter C, bars 41 to 48\"",
         "opens the drill at this passage, by its title or id"},
        {"--screen", "NAME", "log", "opens " + command::joinedWithOr(choices.screens)},
        {"--language", "CODE", "de",
         "uses this language for this session only: " + command::joinedWithOr(choices.languages)},
        {"--shot", "FILE", "window.png", "writes a picture of the window as PNG and exits"},
        {"--size", "WxH", "1280x800", "size of the window and of that picture"},
    };
}

Result<WindowArguments> readWindowArguments(std::span<const std::string> words,
                                            const WindowChoices& choices) {
    WindowArguments read;
    if (!words.empty() && words.front() == "--version") {
        read.version = true;
        return read;
    }
    const auto sorted = command::Arguments::read({"piolo", windowOptions(choices), 0}, words);
    if (!sorted) return sorted.fault();
    read.help = sorted->helpAsked();
    command::OptionReader in(*sorted);
    const command::PictureSize size = command::readSize(in, {});
    read.options = {in.text("--folder", ""),
                    in.text("--drill", ""),
                    asked(in, "--screen", choices.screens),
                    asked(in, "--language", choices.languages),
                    in.text("--shot", ""),
                    size.width,
                    size.height};
    if (in.fault() && !read.help) return *in.fault();
    return read;
}

} // namespace piolo::app
