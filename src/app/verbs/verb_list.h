// SPDX-License-Identifier: GPL-3.0-or-later
// Every verb of the command: its name, what may follow it, and what it does.
#pragma once

#include "app/verbs/arguments.h"
#include "app/verbs/verb.h"

namespace piolo::app {

/// What a verb gives back: the exit code, or the fault that ends it.
using VerbEnd = Result<ExitCode>;

struct Verb {
    std::string_view name;
    Syntax syntax;
    VerbEnd (*run)(const Words& words) = nullptr;
};

[[nodiscard]] Verb clickVerb();
[[nodiscard]] Verb trackVerb();
[[nodiscard]] Verb ladderVerb();
[[nodiscard]] Verb curveVerb();
[[nodiscard]] Verb sheetVerb();
[[nodiscard]] Verb barsVerb();
[[nodiscard]] Verb modelVerb();
[[nodiscard]] Verb scaleVerb();
[[nodiscard]] Verb staffVerb();
[[nodiscard]] Verb checkVerb();
[[nodiscard]] Verb exportVerb();
[[nodiscard]] Verb importVerb();

} // namespace piolo::app
