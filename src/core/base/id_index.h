// SPDX-License-Identifier: GPL-3.0-or-later
// Maps many ids to numbers, for looking up ids from years of journals.
#pragma once

#include "core/base/id.h"

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace piolo {

/// A hash table of small slots next to a list of the ids: a look-up costs one cache miss instead of three.
/// Holds fewer than 2^32 ids.
class IdIndex {
public:
    /// The number of `id`, and whether it is new; a new id is stored with `number`.
    std::pair<std::uint32_t, bool> keep(Id id, std::uint32_t number);
    [[nodiscard]] std::size_t size() const noexcept { return ids_.size(); }
    /// Reserves room for `ids` ids, so that the table need not grow.
    void reserve(std::size_t ids);
    /// Prefetches the slot of `id`, which will be looked up soon.
    void expect(Id id) const noexcept;

private:
    struct Numbered {
        Id id;
        std::uint32_t number = 0;
    };
    /// The upper half of an id's hash, and 1 + its index in the list; 0: free.
    struct Slot {
        std::uint32_t tag = 0;
        std::uint32_t place = 0;
    };

    [[nodiscard]] Slot& slotOf(Id id) noexcept;
    void resize(std::size_t slots);

    std::vector<Numbered> ids_;
    std::vector<Slot> slots_; ///< their number is a power of two; at most three quarters are used
};

} // namespace piolo
