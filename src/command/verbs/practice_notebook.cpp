// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/verbs/practice_notebook.h"

#include "command/output/report.h"
#include "journal/folder/ports.h"
#include "journal/folder/practice_folder.h"

#include <utility>

namespace piolo::command {

Result<Notebook> readNotebook(const std::string& folder) {
    const std::int64_t now = journal::systemClock()->now().utcMillis;
    auto contents = journal::readFolder(folder, {}, now);
    if (!contents) return contents.fault();
    for (const Fault& fault : contents->faults) report(fault);
    return fold(std::move(contents.value().facts));
}

Result<Id> passageNamed(const Notebook& notebook, const std::string& wanted, const std::string& location) {
    const std::vector<Id> found = notebook.find(wanted);
    if (found.size() == 1) return found.front();
    if (found.empty()) return Fault{FaultNumber::noSuchPassage, {location}, {wanted}};
    std::string ids;
    for (const Id id : found) ids.append(ids.empty() ? "" : ", ").append(id.text());
    return Fault{FaultNumber::ambiguousPassage, {location}, {wanted, ids}};
}

} // namespace piolo::command
