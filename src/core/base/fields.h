// SPDX-License-Identifier: GPL-3.0-or-later
// What a value consists of, said once. A type that is kept in files has a function template
//
//     template <typename Fields> void describe(Fields& in, Thing& thing)
//
// beside it, which hands each member with its key and its bounds to `in`. Whatever goes through a thing
// member by member is such a `Fields`: reading and writing JSON (src/journal), the list of what differs
// between two things (core/passage), the ids that a fact names (src/practice). It has
//
//     in.field(key, value, bounds...)    one member; the bounds are Range, Longest, Name, Most, OneOf
//     in.unusual(key, unusual, with)     calls with() unless the key is missing for the usual value
//
//     in.known(key, known, with)         calls with() unless the key is missing for no value
//
//     in.check(fits, key)                a bound that holds between members
//
// A value that is written as a list of fixed length has describeItems() instead, with in.item(value, range)
// and in.lastItem(value, range, usual), which may be missing. To write, a copy is described: describe() may
// change it.
#pragma once

#include "core/time/tempo.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <type_traits>
#include <utility>

namespace piolo {

/// A whole number within these, both included.
struct Range {
    std::int64_t least;
    std::int64_t most;
};
/// A text of at most so many bytes.
struct Longest {
    std::size_t bytes;
};
/// A name that the player gives: passage files bound it, a line does not.
struct Name {};
/// A list of at most so many elements.
struct Most {
    std::size_t elements;
};
/// Only those values of an enum.
template <typename Value>
struct OneOf {
    bool (*allows)(Value) noexcept;
};

/// A time in milliseconds: up to a week, longer than anybody plays.
inline constexpr Range playingMillis{0, 604'800'000};

/// Programs that read whole numbers as floating point read these exactly: up to 2^53 - 1.
inline constexpr Range exactCount{0, 9'007'199'254'740'991};

/// A member that is left out when it has its usual value.
template <typename Fields, typename Value, typename... Bounds>
void unlessUsual(Fields& in, const char* key, Value& value, const std::type_identity_t<Value>& usual,
                 Bounds... bounds) {
    in.unusual(key, value != usual, [&] { in.field(key, value, bounds...); });
}

/// What is read into.
template <typename Value>
[[nodiscard]] Value blank() {
    if constexpr (std::is_same_v<Value, Tempo>)
        return Tempo::bpm(60);
    else
        return Value{};
}

/// A member that is left out when there is none.
template <typename Fields, typename Value, typename... Bounds>
void ifKnown(Fields& in, const char* key, std::optional<Value>& value, Bounds... bounds) {
    in.known(key, value.has_value(), [&] {
        if (!value) value = blank<Value>();
        in.field(key, *value, bounds...);
    });
}

/// The part of a `Fields` that goes through what a value has, and leaves out what it would not write.
struct PresentFields {
    template <typename With>
    void unusual(const char* /*key*/, bool unusual, With with) {
        if (unusual) with();
    }
    template <typename With>
    void known(const char* /*key*/, bool known, With with) {
        if (known) with();
    }
    void check(bool /*fits*/, const char* /*key*/) {}
};

/// Goes through nothing: for asking whether a type is described.
struct NoFields {
    void field(const char* key, auto& value, auto... bounds);
};

template <typename Value>
concept Described = requires(NoFields& in, Value& value) {
    describe(in, value);
};
template <typename Value>
concept DescribedItems = requires(NoFields& in, Value& value) {
    describeItems(in, value);
};

} // namespace piolo
