// SPDX-License-Identifier: GPL-3.0-or-later
// The groups of a passage.
#pragma once

#include "core/base/fields.h"
#include "core/facts/passage_fact.h"
#include "core/music/note_text.h"
#include "core/passage/group_marks.h"

#include <cstdint>
#include <optional>
#include <tuple>
#include <type_traits>
#include <vector>

namespace piolo {

/// Where a group of a passage must be. `needed`: a passage is none without it. `made`: it is recorded when
/// the passage is made, and may be missing in a passage file. `said`: only where it says something.
enum class GroupUse : std::uint8_t { needed, made, said };

/// A group: where it is in a passage, in the fact that records it, and in the marks.
template <typename Value, typename Given, typename... Bounds>
struct PassageGroup {
    static constexpr bool mayBeNone = !std::is_same_v<Value, Given>; ///< a passage may be without it
    static constexpr bool isList = !Described<Given>;

    const char* key; ///< in the journal and in passage files
    GroupUse use;
    Value Passage::*value;
    std::optional<Given> PassageFact::*given;
    bool GroupMarks::*mark;
    std::tuple<Bounds...> bounds{};

    /// Whether it says anything.
    [[nodiscard]] bool saysMore(const Passage& passage) const { return passage.*value != Value{}; }
    /// Whether recording it would turn `from` into `to`. A fact cannot take a scale away.
    [[nodiscard]] bool differs(const Passage& from, const Passage& to) const {
        if constexpr (mayBeNone)
            if (!(to.*value)) return false;
        return from.*value != to.*value;
    }
};
template <typename Value, typename Given, typename... Bounds>
PassageGroup(const char*, GroupUse, Value Passage::*, std::optional<Given> PassageFact::*, bool GroupMarks::*,
             std::tuple<Bounds...>) -> PassageGroup<Value, Given, Bounds...>;
template <typename Value, typename Given>
PassageGroup(const char*, GroupUse, Value Passage::*, std::optional<Given> PassageFact::*, bool GroupMarks::*)
    -> PassageGroup<Value, Given>;

/// The groups of a passage, in the order in which they are written: the one list of them.
inline constexpr std::tuple passageGroups{
    PassageGroup{"title", GroupUse::needed, &Passage::title, &PassageFact::title, &GroupMarks::title},
    PassageGroup{"music", GroupUse::needed, &Passage::music, &PassageFact::music, &GroupMarks::music},
    PassageGroup{"tempi", GroupUse::needed, &Passage::tempi, &PassageFact::tempi, &GroupMarks::tempi},
    PassageGroup{"click", GroupUse::made, &Passage::click, &PassageFact::click, &GroupMarks::click},
    PassageGroup{"manner", GroupUse::said, &Passage::manner, &PassageFact::manner, &GroupMarks::manner},
    PassageGroup{"notation", GroupUse::said, &Passage::notes, &PassageFact::notes, &GroupMarks::notes,
                 std::tuple{Most{Passage::mostNotes}}},
    PassageGroup{"scale", GroupUse::said, &Passage::scale, &PassageFact::scale, &GroupMarks::scale}};
// A mark that no group has is found here.
static_assert(sizeof(GroupMarks) == std::tuple_size_v<decltype(passageGroups)>);

/// Calls `with` for each group in turn.
template <typename With>
constexpr void forEachGroup(With with) {
    std::apply([&](const auto&... group) { (with(group), ...); }, passageGroups);
}

/// The value of a group, as a member of what it is in.
template <typename Fields, typename Group, typename Value>
void describeGroup(Fields& in, const Group& group, Value& value) {
    std::apply([&](const auto&... bounds) { in.field(group.key, value, bounds...); }, group.bounds);
    if constexpr (std::is_same_v<Value, std::vector<Note>>) in.check(areInOrder(value), group.key);
}

/// All of a passage but its id.
template <typename Fields>
void describe(Fields& in, Passage& passage) {
    forEachGroup([&]<typename Group>(const Group& group) {
        auto& value = passage.*group.value;
        if constexpr (Group::mayBeNone)
            in.known(group.key, value.has_value(), [&] {
                if (!value) value.emplace();
                describeGroup(in, group, *value);
            });
        else if (group.use == GroupUse::needed)
            describeGroup(in, group, value);
        else
            in.unusual(group.key, group.saysMore(passage), [&] { describeGroup(in, group, value); });
    });
}

template <typename Fields>
void describe(Fields& in, PassageFact& fact) {
    in.field("passage", fact.passage);
    forEachGroup([&](const auto& group) {
        auto& given = fact.*group.given;
        in.known(group.key, given.has_value(), [&] {
            if (!given) given.emplace();
            describeGroup(in, group, *given);
        });
    });
    unlessUsual(in, "imported", fact.imported, false);
}

} // namespace piolo
