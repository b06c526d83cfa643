// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_copy.h"

#include "command/output/written_file.h"
#include "journal/folder/own_file.h"
#include "journal/folder/practice_folder.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <map>

namespace piolo::samples {

namespace {

constexpr std::int64_t millisInDay = 86'400'000;

Date moved(Date date, std::int64_t days) { return Date::fromDaysSince1970(date.daysSince1970() + days); }

Fact moved(Fact fact, std::int64_t days) {
    fact.at.utcMillis += days * millisInDay;
    fact.order += days * millisInDay;
    auto* piece = std::get_if<PieceFact>(&fact.body);
    if (piece != nullptr && piece->due && *piece->due) piece->due = std::optional(moved(**piece->due, days));
    return fact;
}

bool holdsPractice(const std::string& folder) {
    const auto files = journal::journalFiles(journal::journalFolder(folder));
    return files && !files->empty();
}

/// The facts as lines, by the path of the file to which they belong.
std::map<std::string, std::string> filesOf(const std::vector<Fact>& facts, const std::string& folder) {
    std::map<std::string, std::string> files;
    for (const Fact& fact : facts) {
        std::string& lines = files[journal::ownFile(folder, fact.device, fact.at.date())];
        lines.append(journal::toLine(fact)).push_back('\n');
    }
    return files;
}

} // namespace

std::vector<Fact> movedByDays(std::vector<Fact> facts, std::int64_t days) {
    for (Fact& fact : facts) fact = moved(std::move(fact), days);
    return facts;
}

Result<SampleCopy> copySample(const std::string& from, const std::string& to, Date today) {
    if (holdsPractice(to)) return SampleCopy{};
    auto contents = journal::readFolder(from, {});
    if (!contents) return contents.fault();
    if (!contents->faults.empty()) return contents->faults.front();
    if (contents->facts.empty()) return Fault{FaultNumber::notAPracticeFolder, {from}, {}};
    std::vector<Fact> facts = std::move(contents.value().facts);
    std::sort(facts.begin(), facts.end(), standsBefore);
    const std::int64_t days = today.daysSince1970() - 1 - facts.back().at.date().daysSince1970();
    facts = movedByDays(std::move(facts), days);
    for (const auto& [path, lines] : filesOf(facts, to)) {
        const Done written = command::writeInFolder(path, lines);
        if (!written) return written.fault();
    }
    return SampleCopy{true, days, facts.size()};
}

} // namespace piolo::samples
