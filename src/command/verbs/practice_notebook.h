// SPDX-License-Identifier: GPL-3.0-or-later
// A practice folder as read by the verbs, and a passage as named by a player.
#pragma once

#include "core/base/result.h"
#include "core/history/notebook.h"

#include <string>
#include <vector>

namespace piolo::command {

/// The folder's notebook. Unreadable lines are reported on standard error; the rest counts. Faults:
/// cannotRead, notAPracticeFolder.
Result<Notebook> readNotebook(const std::string& folder);

/// The passage with the id or exact title `wanted`. Faults noSuchPassage and ambiguousPassage, with
/// `location`.
Result<Id> passageNamed(const Notebook& notebook, const std::string& wanted, const std::string& location);

/// The passages of the arguments PASSAGE, each once. Faults as passageNamed().
Result<std::vector<Id>> passagesNamed(const Notebook& notebook, const std::vector<std::string>& wanted);

} // namespace piolo::command
