// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/telling.h"
#include "app/verbs/verb_list.h"
#include "journal/passage_file/passage_file.h"
#include "practice/check/journal_check.h"
#include "score/read/score_file.h"

#include <filesystem>
#include <limits>

namespace piolo::app {
namespace {

// A file that cannot be read is the command's own trouble; all else is what was asked for.
Done report(const Fault& fault) {
    if (fault.number == FaultNumber::cannotRead) {
        tell(fault);
        return done();
    }
    return sayFault(fault);
}

std::vector<Fault> faultsAt(const std::string& path) {
    std::error_code unknown;
    if (journal::isPassageFile(path) && !std::filesystem::is_directory(path, unknown)) {
        const auto set = journal::readPassageFile(path);
        return set ? std::vector<Fault>() : std::vector{set.fault()};
    }
    if (score::isScoreFile(path) && !std::filesystem::is_directory(path, unknown))
        return score::readScoreFile(path).faults;
    const auto files = practice::journalFilesAt(path);
    return files ? practice::faultsOf(*files) : std::vector{files.fault()};
}

VerbEnd run(const Words& words) {
    if (words.freeWords().empty())
        return Fault{FaultNumber::missingOption, {"FILE-OR-FOLDER"}, {"~/spring-concert"}};
    ExitCode end = exitDone;
    for (const std::string& path : words.freeWords()) {
        const std::vector<Fault> faults = faultsAt(path);
        if (!faults.empty()) end = exitInput;
        for (const Fault& fault : faults) {
            const Done said = report(fault);
            if (!said) return said.fault();
        }
    }
    return end;
}

} // namespace

Verb checkVerb() { return {"check", {"piolo check", {}, std::numeric_limits<std::size_t>::max()}, run}; }

} // namespace piolo::app
