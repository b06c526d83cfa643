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

struct PlacedFact {
    Fact fact;
    Place place;
};

std::vector<PlacedFact> factsOf(journal::JournalPage page) {
    std::vector<PlacedFact> placed;
    placed.reserve(page.facts.size());
    for (std::size_t i = 0; i < page.facts.size(); ++i)
        placed.push_back({std::move(page.facts[i]), {page.path, page.lines[i]}});
    return placed;
}

// The device's own positions are not needed here.
journal::JournalPage pageOf(const std::string& path) { return journal::readPage(path, {}, 0); }

class Known {
public:
    /// Adds the fault repeatedId if the id is already used for another fact.
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

void addUnknownIds(const PlacedFact& placed, const Known& known, std::vector<Fault>& faults) {
    for (const Id id : namedBy(placed.fact.body))
        if (!known.holds(id)) faults.push_back({FaultNumber::unknownPassage, placed.place, {id.text()}});
}

void sortByPlace(std::vector<Fault>& faults) {
    const auto key = [](const Fault& fault) {
        return std::tie(fault.place.file, fault.place.line, fault.number, fault.arguments);
    };
    std::ranges::sort(faults, [&](const Fault& a, const Fault& b) { return key(a) < key(b); });
}

} // namespace

std::vector<Fault> faultsOf(const JournalFiles& files) {
    std::vector<Fault> faults;
    std::vector<Fault> notAsked;
    std::vector<PlacedFact> checked;
    Known known;
    for (const std::string& path : files.checked) {
        journal::JournalPage page = pageOf(path);
        faults.insert(faults.end(), page.faults.begin(), page.faults.end());
        for (PlacedFact& placed : factsOf(std::move(page))) {
            known.take(placed, faults);
            checked.push_back(std::move(placed));
        }
    }
    for (const std::string& path : files.beside)
        for (const PlacedFact& placed : factsOf(pageOf(path))) known.take(placed, notAsked);
    for (const PlacedFact& placed : checked) addUnknownIds(placed, known, faults);
    sortByPlace(faults);
    return faults;
}

} // namespace piolo::practice
