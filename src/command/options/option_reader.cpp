// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"

#include "files/path_ending.h"

#include <algorithm>
#include <charconv>
#include <system_error>

namespace piolo::command {
namespace {

bool isWhole(std::string_view text) {
    if (text.starts_with('-')) text.remove_prefix(1);
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

void OptionReader::fail(Fault fault, std::string_view option) {
    if (fault_) return;
    if (fault.location.file.empty()) fault.location.file = option;
    fault_ = std::move(fault);
}

const std::string* OptionReader::given(std::string_view option) {
    const std::string* word = arguments_.valueOf(option);
    if (word == nullptr)
        fail({FaultNumber::missingOption, {}, {arguments_.syntax().exampleOf(option)}}, option);
    return word;
}

std::string OptionReader::text(std::string_view option) {
    const std::string* word = given(option);
    if (word != nullptr && word->empty())
        fail({FaultNumber::missingValue, {}, {arguments_.syntax().exampleOf(option)}}, option);
    return word == nullptr ? std::string() : *word;
}

std::string OptionReader::text(std::string_view option, std::string_view fallback) {
    return arguments_.valueOf(option) == nullptr ? std::string(fallback) : text(option);
}

Tempo OptionReader::tempo(std::string_view option) {
    const std::string* word = given(option);
    if (word == nullptr) return Tempo::bpm(60);
    const auto tempo = Tempo::parse(*word);
    if (tempo) return *tempo;
    fail(tempo.fault(), option);
    return Tempo::bpm(60);
}

Tempo OptionReader::tempo(std::string_view option, Tempo fallback) {
    return arguments_.valueOf(option) == nullptr ? fallback : tempo(option);
}

std::int64_t OptionReader::whole(std::string_view option, WholeRange range,
                                 std::optional<std::int64_t> fallback) {
    if (fallback && arguments_.valueOf(option) == nullptr) return *fallback;
    const std::string* word = given(option);
    if (word == nullptr) return range.least;
    if (!isWhole(*word)) {
        fail({FaultNumber::badNumber, {}, {*word, arguments_.syntax().exampleOf(option)}}, option);
        return range.least;
    }
    std::int64_t value = 0;
    const auto read = std::from_chars(word->data(), word->data() + word->size(), value);
    if (read.ec == std::errc() && value >= range.least && value <= range.most) return value;
    fail({FaultNumber::badRange, {}, {*word, std::to_string(range.least), std::to_string(range.most)}},
         option);
    return range.least;
}

std::size_t OptionReader::choice(std::string_view option, std::initializer_list<std::string_view> choices) {
    return choice(option, std::span(choices.begin(), choices.size()));
}

std::size_t OptionReader::choice(std::string_view option, std::span<const std::string_view> choices) {
    const std::string* word = arguments_.valueOf(option);
    if (word == nullptr) return 0;
    const auto found = std::ranges::find(choices, *word);
    if (found != choices.end()) return static_cast<std::size_t>(found - choices.begin());
    fail({FaultNumber::badChoice, {}, {*word, joinedWithOr(choices)}}, option);
    return 0;
}

void OptionReader::inOrder(std::string_view lowerOption, Tempo lower, std::string_view upperOption,
                           Tempo upper) {
    if (lower <= upper) return;
    fail({FaultNumber::badOrder, {}, {lower.text(), std::string(upperOption.substr(2)), upper.text()}},
         lowerOption);
}

std::size_t OptionReader::fileKind(std::string_view option, const std::string& path,
                                   std::initializer_list<std::string_view> kinds) {
    const auto* const found =
        std::ranges::find_if(kinds, [&](std::string_view kind) { return files::endsIn(path, kind); });
    if (found != kinds.end()) return static_cast<std::size_t>(found - kinds.begin());
    fail({FaultNumber::badFileKind, {}, {path, joinedWithOr(std::span(kinds.begin(), kinds.size()))}},
         option);
    return 0;
}

} // namespace piolo::command
