// SPDX-License-Identifier: GPL-3.0-or-later
// The members of a piece.
#pragma once

#include "core/base/fields.h"
#include "core/facts/piece_fact.h"

#include <cstddef>
#include <optional>
#include <string_view>
#include <tuple>
#include <type_traits>

namespace piolo {

/// A member of a piece, and of the fact that records it.
template <typename Value, typename... Bounds>
struct PieceMember {
    const char* key; ///< in the journal and in passage files
    Value Piece::*value;
    std::optional<Value> PieceFact::*given;
    std::tuple<Bounds...> bounds{};
};
template <typename Value, typename... Bounds>
PieceMember(const char*, Value Piece::*, std::optional<Value> PieceFact::*, std::tuple<Bounds...>)
    -> PieceMember<Value, Bounds...>;
template <typename Value>
PieceMember(const char*, Value Piece::*, std::optional<Value> PieceFact::*) -> PieceMember<Value>;

/// The members of a piece, in the order in which they are written: the one list of them.
inline constexpr std::tuple pieceMembers{
    PieceMember{"name", &Piece::name, &PieceFact::name, std::tuple{Name{}}},
    PieceMember{"instrument", &Piece::instrument, &PieceFact::instrument, std::tuple{Name{}}},
    PieceMember{"due", &Piece::due, &PieceFact::due},
    PieceMember{"composer", &Piece::composer, &PieceFact::composer, std::tuple{Name{}}},
    PieceMember{"transposition", &Piece::transposition, &PieceFact::transposition,
                std::tuple{Range{-Piece::mostSemitones, Piece::mostSemitones}}},
    PieceMember{"bars", &Piece::bars, &PieceFact::bars, std::tuple{Range{0, Piece::mostBars}}},
    PieceMember{"music", &Piece::music, &PieceFact::music},
    PieceMember{"notes", &Piece::notes, &PieceFact::notes, std::tuple{Longest{Piece::longestNotes}}}};
inline constexpr std::size_t pieceMemberCount = std::tuple_size_v<decltype(pieceMembers)>;

/// Calls `with` for each member in turn.
template <typename With>
constexpr void forEachMember(With with) {
    std::apply([&](const auto&... member) { (with(member), ...); }, pieceMembers);
}

/// All of a piece but its id: its name and its instrument always, the rest where it says something.
template <typename Fields>
void describe(Fields& in, Piece& piece) {
    in.field("name", piece.name, Name{});
    forEachMember([&](const auto& member) {
        auto& value = piece.*member.value;
        const std::string_view key = member.key;
        if (key == "name") return;
        const auto field = [&](auto& known) {
            std::apply([&](const auto&... bounds) { in.field(member.key, known, bounds...); }, member.bounds);
        };
        if constexpr (requires { value.has_value(); })
            in.known(member.key, value.has_value(), [&] {
                if (!value) value.emplace();
                field(*value);
            });
        else
            in.unusual(member.key, key == "instrument" || value != std::remove_cvref_t<decltype(value)>{},
                       [&] { field(value); });
    });
}

template <typename Fields>
void describe(Fields& in, PieceFact& fact) {
    in.field("piece", fact.piece);
    forEachMember([&](const auto& member) {
        std::apply([&](const auto&... bounds) { ifKnown(in, member.key, fact.*member.given, bounds...); },
                   member.bounds);
    });
}

} // namespace piolo
