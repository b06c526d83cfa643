// SPDX-License-Identifier: GPL-3.0-or-later
// A practice folder as the verbs read it, and a passage as a player names it.
#pragma once

#include "core/base/result.h"
#include "core/history/notebook.h"

#include <string>

namespace piolo::command {

/// The fold of the folder. Lines that cannot be read are told on standard error; the rest counts. Faults:
/// cannotRead, notAPracticeFolder.
Result<Notebook> readNotebook(const std::string& folder);

/// The passage that `wanted` (an id or an exact title) names. Faults noSuchPassage and ambiguousPassage, with
/// `place`.
Result<Id> passageNamed(const Notebook& notebook, const std::string& wanted, const std::string& place);

} // namespace piolo::command
