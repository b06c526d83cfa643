// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/check/named_ids.h"

#include "core/base/fields.h"

#include <type_traits>
#include <utility>

namespace piolo::practice {
namespace {

/// Gathers ids: a `Fields` for describe().
class NamedIds : public PresentFields {
public:
    template <typename Value, typename... Bounds>
    void field(const char* /*key*/, Value& value, Bounds... /*bounds*/) {
        if constexpr (std::is_same_v<Value, Id>)
            ids.push_back(value);
        else if constexpr (std::is_same_v<Value, std::vector<Id>>)
            ids.insert(ids.end(), value.begin(), value.end());
        else if constexpr (Described<Value>)
            describe(*this, value);
    }

    std::vector<Id> ids;
};

} // namespace

std::vector<Id> namedBy(const FactBody& body) {
    NamedIds named;
    std::visit([&](auto fact) { describe(named, fact); }, body);
    return std::move(named.ids);
}

Id describedBy(const FactBody& body) {
    if (const auto* passage = std::get_if<PassageFact>(&body); passage != nullptr && passage->tempi)
        return passage->passage;
    if (const auto* piece = std::get_if<PieceFact>(&body)) return piece->piece;
    return {};
}

} // namespace piolo::practice
