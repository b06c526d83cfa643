// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/verbs/verb_list.h"

namespace piolo::command {

std::vector<Verb> verbs() {
#define PIOLO_VERB(name) name##_verb::verb(),
    return {
#include "command/verbs/verb_table.inc"
    };
#undef PIOLO_VERB
}

std::optional<Verb> verbNamed(std::string_view name) {
    for (Verb& verb : verbs())
        if (verb.name == name) return std::move(verb);
    return std::nullopt;
}

std::string verbNames() {
    const std::vector<Verb> all = verbs();
    std::vector<std::string_view> names;
    for (const Verb& verb : all) names.push_back(verb.name);
    return joinedWithOr(names);
}

} // namespace piolo::command
