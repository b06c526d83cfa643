// SPDX-License-Identifier: GPL-3.0-or-later
// Many ids, each with a number: what a journal of many years has to look up.
#pragma once

#include "core/base/id.h"

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace piolo {

/// A hash table of small slots beside a list of the ids: one look-up is one cache miss, not three. Fewer than
/// 2^32 ids.
class IdIndex {
public:
    /// The number of `id`, and whether it is new: then it is kept with `number`.
    std::pair<std::uint32_t, bool> keep(Id id, std::uint32_t number);
    [[nodiscard]] std::size_t size() const noexcept { return ids_.size(); }
    /// Room for so many ids without growing.
    void reserve(std::size_t ids);
    /// `id` will be asked for soon: its slot is fetched meanwhile.
    void expect(Id id) const noexcept;

private:
    struct Numbered {
        Id id;
        std::uint32_t number = 0;
    };
    /// The upper half of an id's hash, and 1 + its place in the list; 0: free.
    struct Slot {
        std::uint32_t tag = 0;
        std::uint32_t place = 0;
    };

    [[nodiscard]] Slot& slotOf(Id id) noexcept;
    void resize(std::size_t slots);

    std::vector<Numbered> ids_;
    std::vector<Slot> slots_; ///< a power of two of them, at most three quarters taken
};

} // namespace piolo
