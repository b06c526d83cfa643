// SPDX-License-Identifier: GPL-3.0-or-later
// The checksum that ends a line: ,"sum":"cbf43926"} It is the CRC-32, in eight lower-case hexadecimal digits,
// of all bytes of the line before that comma.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace piolo::journal {

enum class SumState : std::uint8_t { none, right, wrong };

struct SummedLine {
    SumState state = SumState::none;
    std::string_view summed; ///< what stands before the sum's comma; empty when there is no sum
};

/// `line`, a JSON object that is not empty, with its sum.
[[nodiscard]] std::string withSum(std::string line);
/// Lines whose last key is not "sum" have none: older lines, and lines that another program wrote anew.
[[nodiscard]] SummedLine sumOf(std::string_view line) noexcept;

} // namespace piolo::journal
