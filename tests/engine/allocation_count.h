// SPDX-License-Identifier: GPL-3.0-or-later
// A tripwire: while one lives, every operator new and delete of the program is counted.
#pragma once

#include <cstdint>

namespace piolo::engine {

class AllocationCount {
public:
    AllocationCount() noexcept;
    ~AllocationCount();
    AllocationCount(const AllocationCount&) = delete;
    AllocationCount& operator=(const AllocationCount&) = delete;
    [[nodiscard]] std::uint64_t value() const noexcept;
};

} // namespace piolo::engine
