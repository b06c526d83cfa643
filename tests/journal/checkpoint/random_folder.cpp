// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_folder.h"

#include "journal/lines/fact_line.h"

#include <fstream>
#include <variant>

namespace piolo::test {

namespace {

/// Different ids than in any other history: their upper half is the history's number.
void rename(Fact& fact, std::uint64_t number) {
    const auto move = [number](Id& id) { id.high += number << 8U; };
    move(fact.id);
    fact.device = fact.device == "pit" ? pitDevice : testDevice;
    std::visit(
        [&](auto& body) {
            if constexpr (requires { body.passage; }) move(body.passage);
            if constexpr (requires { body.retracts; }) move(body.retracts);
            if constexpr (requires { body.run; }) move(body.run);
            if constexpr (requires { body.corrects; }) move(body.corrects);
            if constexpr (requires { body.of; }) body.of = body.of == "pit" ? pitDevice : testDevice;
            if constexpr (requires { body.runs; })
                for (Id& run : body.runs) move(run);
        },
        fact.body);
}

} // namespace

RandomFolder::RandomFolder(unsigned seed, int passages, int facts) : dice_(seed), random_(seed) {
    std::vector<Fact> all;
    for (int i = 0; i < passages; ++i) {
        const auto one = history(facts);
        all.insert(all.end(), one.begin(), one.end());
    }
    for (std::size_t kind = 0; kind < std::variant_size_v<FactBody>; ++kind) {
        all.push_back(random_.fact(kind));
        if (all.back().order > readAt) all.back().order %= readAt;
    }
    // In any order, with occasional duplicates.
    testing::shuffle(all, dice_);
    all.push_back(all.front());
    append(all);
}

std::vector<Fact> RandomFolder::history(int facts) {
    std::vector<Fact> made = testing::RandomHistory(dice_, facts).facts();
    ++made_;
    for (Fact& fact : made) rename(fact, made_);
    return made;
}

std::vector<Fact> RandomFolder::more() {
    std::vector<Fact> facts = history(8);
    const std::size_t known = facts_.size();
    for (int i = 0; i < 12; ++i) {
        constexpr std::size_t correction = FactBody(CorrectionFact{}).index();
        const auto kind = static_cast<std::size_t>(testing::roll(dice_, 6));
        Fact fact = random_.fact(kind == 5 ? correction : kind);
        const Fact& about = facts_[static_cast<std::size_t>(testing::roll(dice_, static_cast<int>(known)))];
        fact.device = about.device;
        fact.order = about.order + testing::roll(dice_, 2000) - 1000;
        if (fact.order < 0) fact.order = 0;
        std::visit(
            [&](auto& body) {
                if constexpr (requires { body.passage; }) body.passage = passageOf(about.body);
                if constexpr (requires { body.retracts; }) body.retracts = about.id;
                if constexpr (requires { body.run; }) body.run = about.id;
                if constexpr (requires { body.corrects; }) body.corrects = about.id;
                if constexpr (requires { body.runs; }) body.runs = {about.id};
            },
            fact.body);
        if (!passageOf(fact.body).isNone()) facts.push_back(fact);
    }
    return facts;
}

void RandomFolder::append(const std::vector<Fact>& facts) {
    for (const Fact& fact : facts) appendBytes(fact.device + "-2026.jsonl", journal::toLine(fact) + "\n");
    facts_.insert(facts_.end(), facts.begin(), facts.end());
}

void RandomFolder::appendBytes(const std::string& name, const std::string& bytes) const {
    std::filesystem::create_directories(folder_ / "journal");
    std::ofstream(journal(name), std::ios::binary | std::ios::app) << bytes;
}

std::vector<std::string> RandomFolder::files() const {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder_ / "journal"))
        names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

} // namespace piolo::test
