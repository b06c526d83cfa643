// SPDX-License-Identifier: GPL-3.0-or-later
// The entries of a passage, oldest first, made when they are first needed.
#pragma once

#include "core/history/entry.h"

#include <functional>
#include <iterator>
#include <vector>

namespace piolo {

/// Reads like a vector. Their number and the newest one are known from the start; any other access makes them
/// all. One thread, like the notebook they belong to.
class Entries {
public:
    using Make = std::function<std::vector<Entry>()>;

    Entries() = default;
    /// `make` returns exactly `count` of them, with `newest` at the end.
    Entries(std::size_t count, Entry newest, Make make);

    [[nodiscard]] std::size_t size() const noexcept { return make_ ? count_ : list_.size(); }
    [[nodiscard]] bool empty() const noexcept { return size() == 0; }
    [[nodiscard]] const Entry& back() const noexcept { return list_.back(); }

    [[nodiscard]] const std::vector<Entry>& all() const;
    [[nodiscard]] const Entry& front() const { return all().front(); }
    [[nodiscard]] const Entry& operator[](std::size_t index) const { return all()[index]; }
    [[nodiscard]] const Entry* begin() const { return all().data(); }
    [[nodiscard]] const Entry* end() const { return begin() + size(); }
    [[nodiscard]] auto rbegin() const { return std::reverse_iterator(end()); }
    [[nodiscard]] auto rend() const { return std::reverse_iterator(begin()); }
    // NOLINTNEXTLINE(google-explicit-constructor): it is one
    operator const std::vector<Entry>&() const { return all(); }
    bool operator==(const Entries& other) const { return all() == other.all(); }

    /// For changing them.
    [[nodiscard]] std::vector<Entry>& list();
    void push_back(Entry entry) { list().push_back(std::move(entry)); }

private:
    std::size_t count_ = 0;
    mutable std::vector<Entry> list_; ///< while `make_` is set: only the newest
    mutable Make make_;
};

} // namespace piolo
