// SPDX-License-Identifier: GPL-3.0-or-later
// Elements of a score turned into values; what is wrong with them is kept, with the line.
#pragma once

#include "core/time/fraction.h"
#include "score/read/xml_text.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace piolo::score {

struct Whole {
    int least = 0;
    int most = 0;
};

/// Reading goes on after a fault, so that all are told; of many, the first `mostFaults`.
class Source {
public:
    Source(const XmlText& text, std::string file) : text_(text), file_(std::move(file)) {}

    /// scoreValue: `node` holds what cannot be; `why` may be empty.
    void wrong(pugi::xml_node node, const std::string& why);
    /// scoreElement: `name` is not in `node`.
    void missing(pugi::xml_node node, const std::string& name);
    void add(pugi::xml_node node, FaultNumber number, std::vector<std::string> arguments);

    /// A whole number in range, or nothing and a fault.
    std::optional<int> whole(pugi::xml_node node, Whole range);
    /// The same of the child `name`; missing is `fallback`.
    int wholeOr(pugi::xml_node parent, const char* name, Whole range, int fallback);
    /// A decimal that is not negative, with at most three places, up to `mostDivisions`.
    std::optional<Fraction> amount(pugi::xml_node node);

    [[nodiscard]] const std::vector<Fault>& faults() const { return faults_; }
    [[nodiscard]] bool isFull() const;

private:
    const XmlText& text_;
    std::string file_;
    std::vector<Fault> faults_;
};

/// The text of an element without white space around it, cut at `longestText`.
[[nodiscard]] std::string textOf(pugi::xml_node node);
/// Reads a decimal in thousandths ("72.5" is 72500); nothing when it is none, negative, above `most`, or has
/// more than three places.
[[nodiscard]] std::optional<std::int64_t> thousandthsIn(std::string_view text, std::int64_t most);

} // namespace piolo::score
