// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/output/report.h"
#include "command/verbs/verb_list.h"
#include "journal/folder/ports.h"
#include "journal/passage_file/passage_file.h"
#include "practice/check/journal_check.h"
#include "score/read/score_file.h"

#include <filesystem>
#include <limits>

namespace piolo::command::check_verb {
namespace {

// An unreadable file is a problem of the command itself; all other faults are the requested output.
Done put(const Fault& fault) {
    if (fault.number == FaultNumber::cannotRead) {
        report(fault);
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
    return files ? practice::faultsOf(*files, journal::systemClock()->now().date())
                 : std::vector{files.fault()};
}

VerbEnd run(const Arguments& arguments) {
    if (arguments.positionals().empty())
        return Fault{FaultNumber::missingOption, {"FILE-OR-FOLDER"}, {"~/spring-concert"}};
    ExitCode end = exitDone;
    for (const std::string& path : arguments.positionals()) {
        const std::vector<Fault> faults = faultsAt(path);
        if (!faults.empty()) end = exitInput;
        for (const Fault& fault : faults) {
            const Done said = put(fault);
            if (!said) return said.fault();
        }
    }
    return end;
}

} // namespace

Verb verb() {
    return {
        "check",
        "finds faults in practice folders, journal files, passage files and scores",
        "piolo check FILE-OR-FOLDER...",
        "It prints one fault per line on standard output, and nothing if there is none. It changes nothing.\n"
        "FILE.piolo.json is read as a passage file, FILE.musicxml, FILE.xml and FILE.mxl as scores, and any "
        "other file\n"
        "as a journal file. Exit code: 0 no fault, 1 faults found, 2 wrong usage.",
        "piolo check ~/spring-concert",
        {},
        std::numeric_limits<std::size_t>::max(),
        run};
}

} // namespace piolo::command::check_verb
