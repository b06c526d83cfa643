// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/source.h"

#include "core/base/clean_text.h"
#include "core/time/fraction_sum.h"
#include "score/read/encoding.h"
#include "score/read/limits.h"

#include <algorithm>
#include <charconv>

namespace piolo::score {

namespace {

constexpr std::size_t longestQuote = 60;
constexpr std::string_view white = " \t\r\n";

bool areDigits(std::string_view text) {
    return std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

template <typename Number>
std::optional<Number> numberIn(std::string_view text) {
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return number;
}

} // namespace

void Source::add(pugi::xml_node node, FaultNumber number, std::vector<std::string> arguments) {
    if (!isFull()) faults_.push_back({number, {file_, text_.lineOf(node)}, std::move(arguments)});
}

void Source::wrong(pugi::xml_node node, const std::string& why) {
    add(node, FaultNumber::scoreValue, {node.name(), cutText(why, longestQuote)});
}

void Source::missing(pugi::xml_node node, const std::string& name) {
    add(node, FaultNumber::scoreElement, {name, node.name()});
}

bool Source::isFull() const { return faults_.size() >= mostFaults; }

std::optional<int> Source::whole(pugi::xml_node node, Whole range) {
    const std::string text = textOf(node);
    const auto number = numberIn<int>(text.starts_with('+') ? text.substr(1) : text);
    if (number && *number >= range.least && *number <= range.most) return number;
    wrong(node, text);
    return std::nullopt;
}

int Source::wholeOr(pugi::xml_node parent, const char* name, Whole range, int fallback) {
    const auto node = parent.child(name);
    return node ? whole(node, range).value_or(fallback) : fallback;
}

std::optional<Fraction> Source::amount(pugi::xml_node node) {
    const auto thousandths = thousandthsIn(textOf(node), std::int64_t{mostDivisions} * 1000);
    if (thousandths) return reducedFraction(*thousandths, 1000);
    wrong(node, textOf(node));
    return std::nullopt;
}

std::string textOf(pugi::xml_node node) {
    std::string_view text = node.text().get();
    const auto begin = text.find_first_not_of(white);
    if (begin == std::string_view::npos) return {};
    text = text.substr(begin, text.find_last_not_of(white) - begin + 1);
    return cutText(cleanText(text), longestText);
}

std::optional<std::int64_t> thousandthsIn(std::string_view text, std::int64_t most) {
    const auto point = std::min(text.find('.'), text.size());
    const auto above = text.substr(0, point);
    std::string below(text.substr(std::min(point + 1, text.size())));
    while (below.size() > 3 && below.back() == '0') below.pop_back();
    if (above.empty() || above.size() > 12 || below.size() > 3 || !areDigits(above) || !areDigits(below))
        return std::nullopt;
    below.resize(3, '0');
    const auto number = numberIn<std::int64_t>(std::string(above) + below);
    return number && *number <= most ? number : std::nullopt;
}

} // namespace piolo::score
