// SPDX-License-Identifier: GPL-3.0-or-later
// All verbs of the command.
#pragma once

#include "command/verbs/verb.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace piolo::command {

// Each verb has a namespace, so that the files of several can be compiled at once.
#define PIOLO_VERB(name)                                                                                     \
    namespace name##_verb {                                                                                  \
        [[nodiscard]] Verb verb();                                                                           \
    }
#include "command/verbs/verb_table.inc"
#undef PIOLO_VERB

/// In the order of the help.
[[nodiscard]] std::vector<Verb> verbs();
[[nodiscard]] std::optional<Verb> verbNamed(std::string_view name);
/// "click, track … or import".
[[nodiscard]] std::string verbNames();

} // namespace piolo::command
