// SPDX-License-Identifier: GPL-3.0-or-later
// What happened, one fact at a time. The journal stores facts; everything else is computed from them.
#pragma once

#include "core/facts/fact_body.h"
#include "core/time/timestamp.h"

#include <cstdint>
#include <string>

namespace piolo {

/// A fact and its place in the order. The notebook sorts by order, device, seq.
struct Fact {
    Id id;
    std::string device;
    std::uint64_t seq = 0;
    std::int64_t order = 0;
    Timestamp at;
    FactBody body;
    bool operator==(const Fact&) const = default;
};

/// True when `a` comes before `b`: by order, device, seq, then id.
[[nodiscard]] bool standsBefore(const Fact& a, const Fact& b) noexcept;

} // namespace piolo
