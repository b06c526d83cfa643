// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/verbs/practice_notebook.h"

#include "command/output/report.h"
#include "journal/folder/practice_folder.h"

#include <algorithm>
#include <utility>

namespace piolo::command {

Result<Notebook> readNotebook(const std::string& folder) {
    auto contents = journal::readFolder(folder, {});
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

Result<std::vector<Id>> passagesNamed(const Notebook& notebook, const std::vector<std::string>& wanted) {
    std::vector<Id> ids;
    for (const std::string& each : wanted) {
        const auto id = passageNamed(notebook, each, "PASSAGE");
        if (!id) return id.fault();
        if (std::find(ids.begin(), ids.end(), *id) == ids.end()) ids.push_back(*id);
    }
    return ids;
}

} // namespace piolo::command
