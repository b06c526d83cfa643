// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/fact.h"

#include <tuple>

namespace piolo {

bool standsBefore(const Fact& a, const Fact& b) noexcept {
    return std::tie(a.order, a.device, a.seq, a.id) < std::tie(b.order, b.device, b.seq, b.id);
}

} // namespace piolo
