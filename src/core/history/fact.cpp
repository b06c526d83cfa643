// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/fact.h"

#include <tuple>

namespace piolo {

bool standsBefore(const Fact& a, const Fact& b) noexcept {
    return std::tie(a.order, a.device, a.seq, a.id) < std::tie(b.order, b.device, b.seq, b.id);
}

Id passageOf(const FactBody& body) noexcept {
    return std::visit(
        [](const auto& fact) -> Id {
            if constexpr (requires { fact.passage; })
                return fact.passage;
            else
                return {};
        },
        body);
}

} // namespace piolo
