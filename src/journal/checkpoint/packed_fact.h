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

/// Ids in their order, in a piece of memory of their own or elsewhere: a fact names its id by its place here.
class SortedIds {
public:
    SortedIds() = default;
    explicit SortedIds(std::vector<Id> ids);
    /// Of ids that another one packed and that stay where they are.
    explicit SortedIds(std::string_view bytes) : there_(bytes) {}

    [[nodiscard]] std::string_view bytes() const noexcept { return own_.empty() ? there_ : own_; }
    [[nodiscard]] std::size_t size() const noexcept { return bytes().size() / sizeof(Id); }
    [[nodiscard]] Id at(std::size_t place) const noexcept;
    [[nodiscard]] std::optional<std::size_t> find(Id id) const noexcept;

private:
    std::string own_;
    std::string_view there_;
};

/// The devices that facts come from, numbered.
class DeviceNames {
public:
    DeviceNames() = default;
    explicit DeviceNames(std::vector<std::string> names) : names_(std::move(names)) {}

    std::size_t numberOf(const std::string& device);
    [[nodiscard]] const std::vector<std::string>& names() const noexcept { return names_; }

private:
    std::vector<std::string> names_;
};

/// False when the fact would not come back as it is. Its id is one of `ids`.
[[nodiscard]] bool packFact(Packer& packer, const Fact& fact, const SortedIds& ids, DeviceNames& devices);
/// `passage`: the one that the fact is about, none for a fact about no passage. Nothing when no fact is
/// there.
[[nodiscard]] std::optional<Fact> unpackFact(Unpacker& unpacker, Id passage, const SortedIds& ids,
                                             const DeviceNames& devices);

} // namespace piolo::journal
