// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facts/fact_body.h"

#include <array>
#include <utility>

namespace piolo {

namespace {

struct NamedKind {
    std::string_view name;
    FactBody (*made)();
};

template <std::size_t... Index>
constexpr auto namedKinds(std::index_sequence<Index...> /*indices*/) {
    return std::array{NamedKind{std::variant_alternative_t<Index, FactBody>::kindName,
                                [] { return FactBody(std::in_place_index<Index>); }}...};
}

constexpr auto allKinds = namedKinds(std::make_index_sequence<kindCount>{});

} // namespace

std::string_view kindOf(const FactBody& body) noexcept { return allKinds[body.index()].name; }

FactRole roleOf(const FactBody& body) noexcept {
    return std::visit([](const auto& fact) { return fact.role; }, body);
}

std::optional<FactBody> bodyOfKind(std::string_view name) {
    for (const NamedKind& kind : allKinds)
        if (kind.name == name) return kind.made();
    return std::nullopt;
}

Id passageOf(const FactBody& body) noexcept {
    return std::visit(
        [](const auto& fact) -> Id {
            if constexpr (OfAPassage<std::remove_cvref_t<decltype(fact)>>)
                return fact.passage;
            else
                return {};
        },
        body);
}

} // namespace piolo
