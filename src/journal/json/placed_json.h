// SPDX-License-Identifier: GPL-3.0-or-later
// A JSON document with the line numbers of the elements of its lists.
#pragma once

#include <cstddef>
#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::journal {

/// How much of a document is read. Anything beyond is not kept in memory.
struct JsonLimits {
    int depth = 16;
    std::size_t values = 1'000'000;
};

struct PlacedJson {
    enum class End : std::uint8_t { whole, broken, tooMuch };
    End end = End::whole;
    long line = 1;        ///< where it broke off, or the last line
    nlohmann::json value; ///< only if whole
    /// By key of the top-level object: for each element of its list, the line on which it begins.
    std::map<std::string, std::vector<long>> lines;
};

/// Never throws. `broken`: invalid JSON, invalid UTF-8, or nested deeper than the limit.
[[nodiscard]] PlacedJson placedJson(std::string_view text, const JsonLimits& limits = {});

} // namespace piolo::journal
