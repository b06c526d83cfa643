// SPDX-License-Identifier: GPL-3.0-or-later
// Converts elements of a score to values and collects faults with their lines.
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

/// Reading continues after a fault, so that all faults are reported, up to the first `mostFaults`.
class Source {
public:
    Source(const XmlText& text, std::string file) : text_(text), file_(std::move(file)) {}

    /// Adds scoreValue: `node` has an invalid value; `why` may be empty.
    void wrong(pugi::xml_node node, const std::string& why);
    /// Adds scoreElement: `name` is missing in `node`.
    void missing(pugi::xml_node node, const std::string& name);
    void add(pugi::xml_node node, FaultNumber number, std::vector<std::string> arguments);

    /// An integer in range; otherwise nothing, and a fault is added.
    std::optional<int> whole(pugi::xml_node node, Whole range);
    /// The same for the child `name`; `fallback` if it is missing.
    int wholeOr(pugi::xml_node parent, const char* name, Whole range, int fallback);
    /// A non-negative decimal with at most three decimal places, up to `mostDivisions`.
    std::optional<Fraction> amount(pugi::xml_node node);

    [[nodiscard]] const std::vector<Fault>& faults() const { return faults_; }
    [[nodiscard]] bool isFull() const;

private:
    const XmlText& text_;
    std::string file_;
    std::vector<Fault> faults_;
};

/// The text of an element without surrounding white space, cut to `longestText`.
[[nodiscard]] std::string textOf(pugi::xml_node node);
/// Reads a decimal as thousandths ("72.5" is 72500). Nothing if it is not a number, is negative, above
/// `most`, or has more than three decimal places.
[[nodiscard]] std::optional<std::int64_t> thousandthsIn(std::string_view text, std::int64_t most);

} // namespace piolo::score
