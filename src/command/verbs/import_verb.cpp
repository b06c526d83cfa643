// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/option_reader.h"
#include "command/output/import_report.h"
#include "command/output/report.h"
#include "command/verbs/verb_list.h"
#include "journal/folder/journal.h"
#include "journal/passage_file/passage_file.h"
#include "journal/settings/machine_settings.h"

#include <mutex>
#include <optional>

namespace piolo::command::import_verb {
namespace {

constexpr int patienceMillis = 30'000;

struct ImportOptions {
    std::string file;
    std::string folder;
    Differing differing = Differing::leave;
};

ImportOptions readOptions(OptionReader& in, const Arguments& arguments) {
    ImportOptions read;
    if (arguments.positionals().empty())
        in.fail({FaultNumber::missingOption, {}, {"sectional.piolo.json"}}, "FILE");
    else
        read.file = arguments.positionals().front();
    read.folder = in.text("--folder");
    read.differing = arguments.valueOf("--replace") == nullptr ? Differing::leave : Differing::replace;
    return read;
}

/// The most recent problem with the disk, as reported on the writer thread.
class Trouble {
public:
    void hear(const Fault& fault) {
        const std::lock_guard lock(mutex_);
        fault_ = fault;
    }
    std::optional<Fault> heard() {
        const std::lock_guard lock(mutex_);
        return fault_;
    }

private:
    std::mutex mutex_;
    std::optional<Fault> fault_;
};

Result<std::unique_ptr<journal::Journal>> openFolder(const std::string& folder, Trouble& trouble) {
    const auto places = journal::systemDirectories();
    if (!places) return places.fault();
    Fault damaged;
    const auto settings =
        journal::loadMachineSettings(places->config, *journal::systemRandomness(), &damaged);
    if (!settings) return settings.fault();
    if (damaged.number != FaultNumber{}) report(damaged);
    journal::JournalHearer hearer;
    hearer.trouble = [&trouble](const Fault& fault) { trouble.hear(fault); };
    auto opened = journal::Journal::open({folder, settings->device, places->state}, std::move(hearer));
    if (opened && opened.value()->readOnly()) return Fault{FaultNumber::folderOpenElsewhere, {folder}, {}};
    return opened;
}

/// Success when all are on disk; otherwise the fault that prevented it.
Done record(journal::Journal& journal, std::span<const ImportItem> plan, Differing differing,
            Trouble& trouble) {
    for (const ImportItem& item : plan)
        if (takes(item, differing))
            for (const FactBody& fact : item.facts) journal.record(fact);
    if (journal.flush(patienceMillis)) return done();
    return trouble.heard().value_or(Fault{FaultNumber::notSavedInTime, {}, {}});
}

VerbEnd run(const Arguments& arguments) {
    OptionReader in(arguments);
    const ImportOptions asked = readOptions(in, arguments);
    if (in.fault()) return *in.fault();
    const auto set = journal::readPassageFile(asked.file);
    if (!set) return set.fault();
    Trouble trouble;
    const auto journal = openFolder(asked.folder, trouble);
    if (!journal) return journal.fault();
    for (const Fault& fault : (*journal)->contents().faults) report(fault);
    const auto plan = importPlan(*set, fold((*journal)->takeFacts()));
    const Done recorded = record(**journal, plan, asked.differing, trouble);
    if (!recorded) return recorded.fault();
    const Done said = say(importReport(plan, asked.differing));
    if (!said) return said.fault();
    return exitDone;
}

} // namespace

Verb verb() {
    return {"import",
            "adds the pieces and passages of a file that piolo export wrote",
            "piolo import FILE --folder DIR [--replace]",
            "New passages are added. Those that differ from the folder, or were removed there, are reported "
            "and left alone.\n"
            "Importing the same file twice changes nothing. First close any window that has the folder open.",
            "piolo import sectional.piolo.json --folder ~/spring-concert",
            {{"--folder", "DIR", "~/spring-concert", "the practice folder; created if it does not exist"},
             {"--replace", "", "", "replaces what differs by what is in the file"}},
            1,
            run};
}

} // namespace piolo::command::import_verb
