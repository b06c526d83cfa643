// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_spec.h"

namespace piolo::command {

OptionSpecs joined(std::initializer_list<OptionSpecs> lists) {
    OptionSpecs all;
    for (const OptionSpecs& list : lists) all.insert(all.end(), list.begin(), list.end());
    return all;
}

OptionSpec folderOption() { return {"--folder", "DIR", "~/spring-concert", "the practice folder"}; }

std::string joinedWithOr(std::span<const std::string_view> words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) text += i + 1 == words.size() ? " or " : ", ";
        text += words[i];
    }
    return text;
}

} // namespace piolo::command
