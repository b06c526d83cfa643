// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/option_reader.h"
#include "app/practice_notebook.h"
#include "app/verb_list.h"
#include "core/passage_set.h"
#include "journal/passage_file.h"

#include <limits>

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {{"--folder", "~/spring-concert"}, {"--out", "sectional.piolo.json"}};

// A passage named twice is in the set once.
Result<PassageSet> namedSet(const Notebook& notebook, const std::vector<std::string>& names) {
    if (names.empty()) return wholeSet(notebook);
    std::vector<Id> ids;
    for (const std::string& name : names) {
        const auto id = passageNamed(notebook, name, "PASSAGE");
        if (!id) return id.fault();
        ids.push_back(*id);
    }
    return chosenSet(notebook, ids);
}

Fault inFolder(Fault fault, const std::string& folder) {
    if (fault.place.file.empty()) fault.place.file = folder;
    return fault;
}

VerbEnd run(const Words& words) {
    OptionReader in(words);
    const std::string folder = in.text("--folder");
    const std::string path = in.text("--out");
    in.fileKind("--out", path, {journal::passageFileEnding});
    if (in.fault()) return *in.fault();
    const auto notebook = readNotebook(folder);
    if (!notebook) return notebook.fault();
    const auto set = namedSet(*notebook, words.freeWords());
    if (!set) return inFolder(set.fault(), folder);
    if (set->pieces.empty() && set->passages.empty())
        return Fault{FaultNumber::nothingToExport, {folder}, {}};
    const Done written = journal::writePassageFile(path, *set);
    if (!written) return written.fault();
    return exitDone;
}

} // namespace

Verb exportVerb() {
    return {"export", {"piolo export", options, std::numeric_limits<std::size_t>::max()}, run};
}

} // namespace piolo::app
