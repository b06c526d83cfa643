// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/id_index.h"

#include <algorithm>
#include <bit>

namespace piolo {

namespace {

constexpr std::size_t fewestSlots = 64;

std::size_t slotsFor(std::size_t ids) { return std::bit_ceil(ids + ids / 3 + 1); }

// The upper half alone would be enough for random ids; ids made by hand often differ only in the lower half.
std::uint64_t mixed(Id id) noexcept { return std::hash<Id>{}(id)*0x9E37'79B9'7F4A'7C15ULL; }

std::size_t firstSlot(std::uint64_t hash, std::size_t slots) noexcept { return hash >> 20U & (slots - 1); }

std::uint32_t tagOf(std::uint64_t hash) noexcept { return static_cast<std::uint32_t>(hash >> 32U); }

} // namespace

IdIndex::Slot& IdIndex::slotOf(Id id) noexcept {
    const std::uint64_t hash = mixed(id);
    const std::uint32_t tag = tagOf(hash);
    std::size_t at = firstSlot(hash, slots_.size());
    for (; slots_[at].place != 0; at = (at + 1) & (slots_.size() - 1))
        if (slots_[at].tag == tag && ids_[slots_[at].place - 1].id == id) break;
    return slots_[at];
}

void IdIndex::resize(std::size_t slots) {
    slots_.assign(slots, Slot{});
    for (std::size_t i = 0; i < ids_.size(); ++i)
        slotOf(ids_[i].id) = {tagOf(mixed(ids_[i].id)), static_cast<std::uint32_t>(i + 1)};
}

void IdIndex::reserve(std::size_t ids) {
    if (slotsFor(ids) <= slots_.size()) return;
    resize(std::max(slotsFor(ids), fewestSlots));
    ids_.reserve(slots_.size() / 4 * 3);
}

void IdIndex::expect(Id id) const noexcept {
    if (!slots_.empty()) __builtin_prefetch(&slots_[firstSlot(mixed(id), slots_.size())]);
}

std::pair<std::uint32_t, bool> IdIndex::keep(Id id, std::uint32_t number) {
    reserve(ids_.size() + 1);
    Slot& slot = slotOf(id);
    if (slot.place != 0) return {ids_[slot.place - 1].number, false};
    ids_.push_back({id, number});
    slot = {tagOf(mixed(id)), static_cast<std::uint32_t>(ids_.size())};
    return {number, true};
}

} // namespace piolo
