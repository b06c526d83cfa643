// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/check/journal_check.h"

#include "journal/folder/journal_page.h"
#include "practice/check/named_ids.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace piolo::practice {
namespace {

struct LocatedFact {
    Fact fact;
    FaultLocation location;
};

std::vector<LocatedFact> factsOf(journal::JournalPage page) {
    std::vector<LocatedFact> located;
    located.reserve(page.facts.size());
    for (std::size_t i = 0; i < page.facts.size(); ++i)
        located.push_back({std::move(page.facts[i]), {page.path, page.lines[i]}});
    return located;
}

// The device's own positions are not needed here.
journal::JournalPage pageOf(const std::string& path) { return journal::readPage(path, {}, 0); }

class Known {
public:
    /// Adds the fault repeatedId if the id is already used for another fact.
    void take(const LocatedFact& located, std::vector<Fault>& faults) {
        const auto [first, isNew] = facts_.try_emplace(located.fact.id, located.fact);
        if (!isNew && first->second != located.fact)
            faults.push_back({FaultNumber::repeatedId, located.location, {located.fact.id.text()}});
        described_.insert(describedBy(located.fact.body));
    }
    [[nodiscard]] bool holds(Id id) const { return facts_.contains(id) || described_.contains(id); }

private:
    std::unordered_map<Id, Fact> facts_;
    std::unordered_set<Id> described_;
};

void addUnknownIds(const LocatedFact& located, const Known& known, std::vector<Fault>& faults) {
    for (const Id id : namedBy(located.fact.body))
        if (!known.holds(id)) faults.push_back({FaultNumber::unknownPassage, located.location, {id.text()}});
}

void sortByPlace(std::vector<Fault>& faults) {
    const auto key = [](const Fault& fault) {
        return std::tie(fault.location.file, fault.location.line, fault.number, fault.arguments);
    };
    std::ranges::sort(faults, [&](const Fault& a, const Fault& b) { return key(a) < key(b); });
}

} // namespace

std::vector<Fault> faultsOf(const JournalFiles& files) {
    std::vector<Fault> faults;
    std::vector<Fault> notAsked;
    std::vector<LocatedFact> checked;
    Known known;
    for (const std::string& path : files.checked) {
        journal::JournalPage page = pageOf(path);
        faults.insert(faults.end(), page.faults.begin(), page.faults.end());
        for (LocatedFact& located : factsOf(std::move(page))) {
            known.take(located, faults);
            checked.push_back(std::move(located));
        }
    }
    for (const std::string& path : files.beside)
        for (const LocatedFact& located : factsOf(pageOf(path))) known.take(located, notAsked);
    for (const LocatedFact& located : checked) addUnknownIds(located, known, faults);
    sortByPlace(faults);
    return faults;
}

} // namespace piolo::practice
