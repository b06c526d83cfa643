// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/difference.h"

#include "core/facts/passage_groups.h"
#include "core/facts/piece_members.h"
#include "core/passage/field_texts.h"

#include <cstddef>
#include <optional>

namespace piolo {

namespace {

/// Both have the same keys: those of one type.
void compare(std::vector<Difference>& found, const std::vector<FieldText>& from,
             const std::vector<FieldText>& to) {
    for (std::size_t i = 0; i < from.size() && i < to.size(); ++i)
        if (from[i].text != to[i].text) found.push_back({from[i].key, from[i].text, to[i].text});
}

/// Notes are compared as a whole.
void compareNotes(std::vector<Difference>& found, const std::vector<Note>& from,
                  const std::vector<Note>& to) {
    if (from == to) return;
    const std::string others = from.size() == to.size() ? " others" : "";
    found.push_back({"notation", std::to_string(from.size()), std::to_string(to.size()) + others});
}

template <typename Value>
void compareKnown(std::vector<Difference>& found, const char* key, const std::optional<Value>& from,
                  const Value& to) {
    if (!from) return found.push_back({key, {}, textOf(to)});
    compare(found, fieldTexts(*from, key), fieldTexts(to, key));
}

} // namespace

std::vector<Difference> differences(const Piece& from, const Piece& to) {
    std::vector<Difference> found;
    compare(found, fieldTexts(from), fieldTexts(to));
    return found;
}

std::vector<Difference> differences(const Passage& from, const Passage& to) {
    std::vector<Difference> found;
    forEachGroup([&]<typename Group>(const Group& group) {
        if constexpr (!Group::isList) {
            if (!group.differs(from, to)) return;
            if constexpr (Group::mayBeNone)
                compareKnown(found, group.key, from.*group.value, *(to.*group.value));
            else
                compare(found, fieldTexts(from.*group.value, group.key),
                        fieldTexts(to.*group.value, group.key));
        }
    });
    compareNotes(found, from.notes, to.notes);
    return found;
}

GroupMarks differingGroups(const Passage& from, const Passage& to) noexcept {
    GroupMarks marks;
    forEachGroup([&](const auto& group) { marks.*group.mark = group.differs(from, to); });
    return marks;
}

GroupMarks sayingGroups(const Passage& passage) noexcept {
    GroupMarks marks;
    forEachGroup([&](const auto& group) {
        marks.*group.mark = group.use == GroupUse::needed || group.saysMore(passage);
    });
    return marks;
}

GroupMarks makingGroups(const Passage& passage) noexcept {
    GroupMarks marks = sayingGroups(passage);
    forEachGroup(
        [&](const auto& group) { marks.*group.mark = marks.*group.mark || group.use == GroupUse::made; });
    return marks;
}

PassageFact factOf(const Passage& passage, const GroupMarks& groups) {
    PassageFact fact;
    fact.passage = passage.id;
    forEachGroup([&](const auto& group) {
        if (groups.*group.mark) fact.*group.given = passage.*group.value;
    });
    return fact;
}

} // namespace piolo
