// SPDX-License-Identifier: GPL-3.0-or-later
// The checksum at the end of a line: ,"sum":"cbf43926"}
// It is the CRC-32, as eight lower-case hexadecimal digits, of all bytes of the line before that comma.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace piolo::journal {

enum class SumState : std::uint8_t { none, right, wrong };

struct SummedLine {
    SumState state = SumState::none;
    std::string_view summed; ///< everything before the sum's comma; empty if there is no sum
};

/// `line`, a JSON object that is not empty, with its checksum added.
[[nodiscard]] std::string withSum(std::string line);
/// Lines whose last key is not "sum" have none: older lines, and lines that another program has rewritten.
[[nodiscard]] SummedLine sumOf(std::string_view line) noexcept;

} // namespace piolo::journal
