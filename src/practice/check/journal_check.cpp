// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/check/journal_check.h"

#include "core/history/wrong_clocks.h"
#include "journal/folder/journal_page.h"
#include "practice/check/named_ids.h"

#include <algorithm>
#include <map>
#include <set>
#include <span>
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
journal::JournalPage pageOf(const std::string& path) { return journal::readPage(path, {}); }

class Known {
public:
    /// Adds the fault repeatedId if the id is already used for another fact.
    void take(const LocatedFact& located, std::vector<Fault>& faults) {
        const auto [first, isNew] = facts_.try_emplace(located.fact.id, located.fact);
        if (!isNew && first->second != located.fact)
            faults.push_back({FaultNumber::repeatedId, located.location, {located.fact.id.text()}});
        if (isNew && located.fact.seq > 0 && !numbers_.emplace(located.fact.device, located.fact.seq).second)
            faults.push_back({FaultNumber::seqTwice,
                              located.location,
                              {std::to_string(located.fact.seq), located.fact.device}});
        described_.insert(describedBy(located.fact.body));
        const auto* const clock = std::get_if<ClockFact>(&located.fact.body);
        if (clock != nullptr && isNew) clocks_.add(located.fact, *clock);
    }
    [[nodiscard]] bool holds(Id id) const { return facts_.contains(id) || described_.contains(id); }
    [[nodiscard]] Date dateOf(const Fact& fact) const { return clocks_.at(fact).date(); }

private:
    std::unordered_map<Id, Fact> facts_;
    std::unordered_set<Id> described_;
    std::set<std::pair<std::string, std::uint64_t>> numbers_; ///< each device's
    WrongClocks clocks_;
};

void addUnknownIds(const LocatedFact& located, const Known& known, std::vector<Fault>& faults) {
    for (const Id id : namedBy(located.fact.body))
        if (!known.holds(id)) faults.push_back({FaultNumber::unknownPassage, located.location, {id.text()}});
}

/// Of the facts of one file.
void addDatedAhead(std::span<const LocatedFact> facts, const Known& known, Date latest,
                   std::vector<Fault>& faults) {
    const LocatedFact* first = nullptr;
    std::size_t count = 0;
    Date last;
    for (const LocatedFact& located : facts) {
        const Date date = known.dateOf(located.fact);
        if (!isPractice(located.fact.body) || date <= latest) continue;
        if (first == nullptr) first = &located;
        ++count;
        last = std::max(last, date);
    }
    if (first != nullptr)
        faults.push_back({FaultNumber::datedAhead, first->location, {std::to_string(count), last.text()}});
}

void sortByPlace(std::vector<Fault>& faults) {
    const auto key = [](const Fault& fault) {
        return std::tie(fault.location.file, fault.location.line, fault.number, fault.arguments);
    };
    std::ranges::sort(faults, [&](const Fault& a, const Fault& b) { return key(a) < key(b); });
}

/// Found by comparing facts, not by reading a line.
bool isBetweenFacts(const Fault& fault) {
    using enum FaultNumber;
    return fault.number == repeatedId || fault.number == unknownPassage || fault.number == seqTwice ||
           fault.number == datedAhead;
}

/// Of each file, all that reading found, at most as many others, and how many more there are; `left` were
/// left out when it was read. `faults` are in order.
std::vector<Fault> limited(std::vector<Fault> faults, std::map<std::string, std::size_t> left) {
    std::vector<Fault> all;
    for (auto next = faults.begin(); next != faults.end();) {
        const std::string file = next->location.file;
        std::size_t others = 0;
        for (; next != faults.end() && next->location.file == file; ++next) {
            if (isBetweenFacts(*next) && ++others > journal::mostFaultsInFile)
                ++left[file];
            else
                all.push_back(std::move(*next));
        }
        if (const std::size_t more = left[file])
            all.push_back({FaultNumber::moreFaults, {file, 0}, {std::to_string(more)}});
    }
    return all;
}

} // namespace

std::vector<Fault> faultsOf(const JournalFiles& files, Date today) {
    std::vector<Fault> faults;
    std::vector<Fault> notAsked;
    std::vector<LocatedFact> checked;
    Known known;
    std::map<std::string, std::size_t> left;
    for (const std::string& path : files.checked) {
        journal::JournalPage page = pageOf(path);
        faults.insert(faults.end(), page.faults.begin(), page.faults.end());
        left[path] = page.moreFaults;
        for (LocatedFact& located : factsOf(std::move(page))) {
            known.take(located, faults);
            checked.push_back(std::move(located));
        }
    }
    for (const std::string& path : files.beside)
        for (const LocatedFact& located : factsOf(pageOf(path))) known.take(located, notAsked);
    for (const LocatedFact& located : checked) addUnknownIds(located, known, faults);
    for (std::span<const LocatedFact> rest = checked; !rest.empty();) {
        const auto file =
            rest.first(static_cast<std::size_t>(std::ranges::find_if(rest,
                                                                     [&](const LocatedFact& located) {
                                                                         return located.location.file !=
                                                                                rest.front().location.file;
                                                                     }) -
                                                rest.begin()));
        addDatedAhead(file, known, latestPlausible(today), faults);
        rest = rest.subspan(file.size());
    }
    sortByPlace(faults);
    return limited(std::move(faults), std::move(left));
}

} // namespace piolo::practice
