// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/id_index.h"

#include <algorithm>
#include <bit>

namespace piolo {

namespace {
constexpr std::size_t fewestSlots = 64;

std::size_t slotsFor(std::size_t ids) { return std::bit_ceil(ids + ids / 3 + 1); }
} // namespace

IdIndex::Slot& IdIndex::slotOf(Id id) noexcept {
    const std::size_t mask = slots_.size() - 1;
    // The high half alone would do for random ids; ids made by hand often differ in the low half only.
    std::size_t at = std::hash<Id>{}(id)*0x9E37'79B9'7F4A'7C15ULL >> 20U & mask;
    while (slots_[at].taken && slots_[at].id != id) at = (at + 1) & mask;
    return slots_[at];
}

void IdIndex::resize(std::size_t slots) {
    const auto old = std::exchange(slots_, std::vector<Slot>(slots));
    for (const Slot& slot : old)
        if (slot.taken) slotOf(slot.id) = slot;
}

void IdIndex::reserve(std::size_t ids) {
    if (slotsFor(ids) > slots_.size()) resize(std::max(slotsFor(ids), fewestSlots));
}

std::pair<std::uint32_t, bool> IdIndex::keep(Id id, std::uint32_t number) {
    reserve(count_ + 1);
    Slot& slot = slotOf(id);
    if (slot.taken) return {slot.number, false};
    slot = {id, number, true};
    ++count_;
    return {number, true};
}

} // namespace piolo
