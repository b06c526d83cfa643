// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/import_report.h"
#include "app/output/telling.h"
#include "app/verbs/option_reader.h"
#include "app/verbs/verb_list.h"
#include "journal/folder/journal.h"
#include "journal/passage_file/passage_file.h"
#include "journal/settings/machine_settings.h"

#include <mutex>
#include <optional>

namespace piolo::app {
namespace {

constexpr OptionSpec options[] = {{"--folder", "~/spring-concert"}, {"--replace", ""}};
constexpr int patienceMillis = 30'000;

struct ImportOptions {
    std::string file;
    std::string folder;
    Differing differing = Differing::leave;
};

ImportOptions readOptions(OptionReader& in, const Words& words) {
    ImportOptions read;
    if (words.freeWords().empty())
        in.fail({FaultNumber::missingOption, {}, {"sectional.piolo.json"}}, "FILE");
    else
        read.file = words.freeWords().front();
    read.folder = in.text("--folder");
    read.differing = words.valueOf("--replace") == nullptr ? Differing::leave : Differing::replace;
    return read;
}

/// The last trouble with the disk; told on the writer's thread.
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
    Fault damaged;
    const auto settings = journal::loadMachineSettings(places.config, *journal::systemRandomness(), &damaged);
    if (!settings) return settings.fault();
    if (damaged.number != FaultNumber{}) tell(damaged);
    journal::JournalHearer hearer;
    hearer.trouble = [&trouble](const Fault& fault) { trouble.hear(fault); };
    auto opened = journal::Journal::open({folder, settings->device, places.state}, std::move(hearer));
    if (opened && opened.value()->readOnly()) return Fault{FaultNumber::folderOpenElsewhere, {folder}, {}};
    return opened;
}

/// All of them on disk, or the fault that kept them from it.
Done record(journal::Journal& journal, std::span<const ImportItem> plan, Differing differing,
            Trouble& trouble) {
    for (const ImportItem& item : plan)
        if (takes(item, differing))
            for (const FactBody& fact : item.facts) journal.record(fact);
    if (journal.flush(patienceMillis)) return done();
    return trouble.heard().value_or(Fault{FaultNumber::notSavedInTime, {}, {}});
}

VerbEnd run(const Words& words) {
    OptionReader in(words);
    const ImportOptions asked = readOptions(in, words);
    if (in.fault()) return *in.fault();
    const auto set = journal::readPassageFile(asked.file);
    if (!set) return set.fault();
    Trouble trouble;
    const auto journal = openFolder(asked.folder, trouble);
    if (!journal) return journal.fault();
    for (const Fault& fault : (*journal)->contents().faults) tell(fault);
    const auto plan = importPlan(*set, fold((*journal)->takeFacts()));
    const Done recorded = record(**journal, plan, asked.differing, trouble);
    if (!recorded) return recorded.fault();
    const Done said = say(importReport(plan, asked.differing));
    if (!said) return said.fault();
    return exitDone;
}

} // namespace

Verb importVerb() { return {"import", {"piolo import", options, 1}, run}; }

} // namespace piolo::app
