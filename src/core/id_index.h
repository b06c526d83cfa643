// SPDX-License-Identifier: GPL-3.0-or-later
// Many ids, each with a number: what a journal of many years has to look up.
#pragma once

#include "core/id.h"

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace piolo {

/// A hash table in one piece of memory: one look-up is one cache miss, not three.
class IdIndex {
public:
    /// The number of `id`, and whether it is new: then it is kept with `number`.
    std::pair<std::uint32_t, bool> keep(Id id, std::uint32_t number);
    [[nodiscard]] std::size_t size() const noexcept { return count_; }
    /// Room for so many ids without growing.
    void reserve(std::size_t ids);

private:
    struct Slot {
        Id id;
        std::uint32_t number = 0;
        bool taken = false;
    };

    [[nodiscard]] Slot& slotOf(Id id) noexcept;
    void resize(std::size_t slots);

    std::vector<Slot> slots_; ///< a power of two of them, at most three quarters taken
    std::size_t count_ = 0;
};

} // namespace piolo
