// SPDX-License-Identifier: GPL-3.0-or-later
// One fact in few bytes: the common kinds by their members, any other as its line.
#pragma once

#include "core/history/fact.h"
#include "journal/checkpoint/packed.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::journal {

/// Sorted ids, in memory of their own or elsewhere: a fact refers to its id by index.
class SortedIds {
public:
    SortedIds() = default;
    explicit SortedIds(std::vector<Id> ids);
    /// Ids that another object packed and that stay where they are.
    explicit SortedIds(std::string_view bytes) : there_(bytes) {}

    [[nodiscard]] std::string_view bytes() const noexcept { return own_.empty() ? there_ : own_; }
    [[nodiscard]] std::size_t size() const noexcept { return bytes().size() / sizeof(Id); }
    [[nodiscard]] Id at(std::size_t place) const noexcept;
    [[nodiscard]] std::optional<std::size_t> find(Id id) const noexcept;

private:
    std::string own_;
    std::string_view there_;
};

/// The devices of the facts, numbered.
class DeviceNames {
public:
    DeviceNames() = default;
    explicit DeviceNames(std::vector<std::string> names) : names_(std::move(names)) {}

    std::size_t numberOf(const std::string& device);
    [[nodiscard]] const std::vector<std::string>& names() const noexcept { return names_; }

private:
    std::vector<std::string> names_;
};

/// False if the fact would not be read back unchanged. Its id is one of `ids`.
[[nodiscard]] bool packFact(Packer& packer, const Fact& fact, const SortedIds& ids, DeviceNames& devices);
/// `passage` is the one that the fact is about, or none. Nothing if there is no fact.
[[nodiscard]] std::optional<Fact> unpackFact(Unpacker& unpacker, Id passage, const SortedIds& ids,
                                             const DeviceNames& devices);

} // namespace piolo::journal
