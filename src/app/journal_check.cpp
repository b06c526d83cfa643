// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/journal_check.h"

#include "app/named_ids.h"
#include "files/whole_file.h"
#include "journal/fact_line.h"
#include "journal/practice_folder.h"

#include <algorithm>
#include <limits>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

namespace piolo::app {
namespace {

struct PlacedFact {
    Fact fact;
    Place place;
};

// The facts of a file with their lines; what is no fact is told by readJournalFile().
std::vector<PlacedFact> placedFacts(const std::string& path) {
    std::vector<PlacedFact> placed;
    const auto bytes = files::wholeFile(path);
    if (!bytes) return placed;
    std::string_view rest = *bytes;
    for (long line = 1; !rest.empty(); ++line) {
        const auto end = std::min(rest.find('\n'), rest.size());
        const Place place{path, line};
        auto fact = journal::fromLine(rest.substr(0, end), place);
        if (fact) placed.push_back({std::move(fact).value(), place});
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return placed;
}

class Known {
public:
    /// The fault repeatedId when the id stands for another fact already.
    void take(const PlacedFact& placed, std::vector<Fault>& faults) {
        const auto [first, isNew] = facts_.try_emplace(placed.fact.id, placed.fact);
        if (!isNew && first->second != placed.fact)
            faults.push_back({FaultNumber::repeatedId, placed.place, {placed.fact.id.text()}});
        described_.insert(describedBy(placed.fact.body));
    }
    [[nodiscard]] bool holds(Id id) const { return facts_.contains(id) || described_.contains(id); }

private:
    std::unordered_map<Id, Fact> facts_;
    std::unordered_set<Id> described_;
};

/// False when the file cannot be read at all: a device that never ends is not read a second time.
bool addReadingFaults(const std::string& path, std::vector<Fault>& faults) {
    // Every order counts here, however far ahead.
    const auto contents = journal::readJournalFile(path, {}, std::numeric_limits<std::int32_t>::max());
    if (!contents) faults.push_back(contents.fault());
    if (contents) faults.insert(faults.end(), contents->faults.begin(), contents->faults.end());
    return contents.ok();
}

void addUnknownIds(const PlacedFact& placed, const Known& known, std::vector<Fault>& faults) {
    for (const Id id : namedBy(placed.fact.body))
        if (!known.holds(id)) faults.push_back({FaultNumber::unknownPassage, placed.place, {id.text()}});
}

// Reading one file tells of an id repeated in it, too.
void sortOnce(std::vector<Fault>& faults) {
    const auto key = [](const Fault& fault) {
        return std::tie(fault.place.file, fault.place.line, fault.number, fault.arguments);
    };
    std::ranges::sort(faults, [&](const Fault& a, const Fault& b) { return key(a) < key(b); });
    const auto rest = std::unique(faults.begin(), faults.end());
    faults.erase(rest, faults.end());
}

} // namespace

std::vector<Fault> faultsOf(const JournalFiles& files) {
    std::vector<Fault> faults;
    std::vector<Fault> notAsked;
    std::vector<PlacedFact> checked;
    Known known;
    for (const std::string& path : files.checked) {
        if (!addReadingFaults(path, faults)) continue;
        for (PlacedFact& placed : placedFacts(path)) {
            known.take(placed, faults);
            checked.push_back(std::move(placed));
        }
    }
    for (const std::string& path : files.beside)
        for (const PlacedFact& placed : placedFacts(path)) known.take(placed, notAsked);
    for (const PlacedFact& placed : checked) addUnknownIds(placed, known, faults);
    sortOnce(faults);
    return faults;
}

} // namespace piolo::app
