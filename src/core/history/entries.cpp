// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/entries.h"

#include <utility>

namespace piolo {

Entries::Entries(std::size_t count, Entry newest, Make make)
    : count_(count), list_{std::move(newest)}, make_(std::move(make)) {}

const std::vector<Entry>& Entries::all() const {
    if (const Make make = std::exchange(make_, nullptr)) list_ = make();
    return list_;
}

std::vector<Entry>& Entries::list() {
    static_cast<void>(all());
    return list_;
}

} // namespace piolo
