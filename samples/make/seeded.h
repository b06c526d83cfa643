// SPDX-License-Identifier: GPL-3.0-or-later
// Random numbers that are the same everywhere: integers only, from one seed.
#pragma once

#include "core/base/id.h"

#include <cstdint>
#include <random>

namespace piolo::samples {

class Seeded {
public:
    explicit Seeded(std::uint64_t seed) : engine_(seed) {}

    /// 0 … count - 1. The standard distributions differ between libraries; a remainder does not.
    std::int64_t below(std::int64_t count) {
        return static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(count));
    }
    /// least … most, both inclusive.
    std::int64_t between(std::int64_t least, std::int64_t most) { return least + below(most - least + 1); }
    /// True with a probability of `perMille` per thousand.
    bool chance(std::int64_t perMille) { return below(1000) < perMille; }
    Id id() {
        const std::uint64_t high = engine_();
        return {high, engine_()};
    }

private:
    std::mt19937_64 engine_;
};

} // namespace piolo::samples
