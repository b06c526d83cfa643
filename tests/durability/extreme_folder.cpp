// SPDX-License-Identifier: GPL-3.0-or-later
#include "extreme_folder.h"

#include "../journal/lines/random_facts.h"
#include "journal/lines/fact_line.h"
#include "journal/lines/line_head.h"

#include <array>
#include <filesystem>
#include <fstream>
#include <vector>

namespace piolo::test {

namespace {

const std::string device = "ee0000000000000000000000000000ee";

class Writer {
public:
    explicit Writer(const ExtremeFolder& extreme)
        : extreme_(extreme), random_(static_cast<unsigned>(extreme.seed)) {}

    std::string lines() {
        for (int passages = extreme_.oneDay ? 1 : 10; passages > 0; --passages) addPassage();
        while (made_ < extreme_.facts) addAbout();
        return std::move(lines_);
    }

private:
    /// The first and last values, and sometimes one between.
    std::int64_t end(std::int64_t least, std::int64_t most) {
        const auto which = random_.number(0, 2);
        return which == 0 ? least : which == 1 ? most : random_.number(least, most);
    }
    template <typename Number>
    Number endOf(std::int64_t least, std::int64_t most) {
        return static_cast<Number>(end(least, most));
    }

    Id add(FactBody body) {
        Fact fact;
        fact.id = random_.id();
        fact.device = device;
        fact.seq = ++made_;
        fact.order = std::min<std::int64_t>(static_cast<std::int64_t>(made_), journal::mostOrder);
        constexpr std::int64_t firstDay = -719'162;
        constexpr std::int64_t lastDay = 2'932'896;
        const std::int64_t day = extreme_.oneDay ? 20'000 : end(firstDay, lastDay);
        fact.at = {day * 86'400'000 + static_cast<std::int64_t>(made_ % 80'000'000), 0};
        fact.body = std::move(body);
        lines_ += journal::toLine(fact) + "\n";
        return fact.id;
    }

    void addPassage() {
        const Id piece = random_.id();
        FactBody made = random_.body(FactBody(PieceFact{}).index());
        std::get<PieceFact>(made).piece = piece;
        add(made);
        pieces_.push_back(piece);
        Passage passage;
        passage.music.firstBar = endOf<std::int32_t>(0, 9999);
        passage.music.bars = endOf<std::int32_t>(0, 999);
        const Id id = random_.id();
        PassageFact fact{id, Title{"Letter " + std::to_string(passages_.size()), piece}, passage.music,
                         passage.tempi};
        if (random_.coin()) fact.scale = Scale{};
        add(fact);
        passages_.push_back(id);
    }

    RunFact run() {
        RunFact run{passage(),
                    *Tempo::fromThousandths(end(Tempo::least, Tempo::most)),
                    random_.coin() ? Mark::clean : Mark::missed,
                    Reason::none,
                    static_cast<RunKind>(extreme_.oneDay ? 0 : random_.number(0, 4)),
                    end(playingMillis.least, playingMillis.most),
                    {}};
        for (auto count = end(0, 30); count > 0; --count)
            run.spots.push_back(
                {endOf<std::int32_t>(-1, 999'999), endOf<std::int32_t>(1, 32), endOf<std::int32_t>(0, 999)});
        return run;
    }

    RunThroughFact through() {
        RunThroughFact through{pieces_[static_cast<std::size_t>(
                                   random_.number(0, static_cast<std::int64_t>(pieces_.size()) - 1))],
                               {},
                               end(playingMillis.least, playingMillis.most),
                               random_.coin(),
                               {}};
        for (auto count = end(0, 999); count > 0; --count)
            through.stops.push_back(
                {endOf<std::int32_t>(0, 9999), end(playingMillis.least, playingMillis.most)});
        return through;
    }

    void addAbout() {
        const auto what = random_.number(0, 19);
        if (what == 0 && !extreme_.oneDay) {
            add(through());
            return;
        }
        if (what == 1 && !extreme_.oneDay) {
            FactBody body = random_.body(static_cast<std::size_t>(random_.number(0, kindCount - 1)));
            std::visit(
                [&](auto& fact) {
                    if constexpr (requires { fact.passage; }) fact.passage = passage();
                    if constexpr (requires { fact.title; }) fact.title.reset(); // found by its title
                },
                body);
            add(std::move(body));
            return;
        }
        if (what < 4 && !runs_.empty()) {
            add(LateMissFact{passages_.front(), runs_[made_ % runs_.size()]});
            return;
        }
        runs_.push_back(add(run()));
    }

    Id passage() {
        return passages_[static_cast<std::size_t>(
            random_.number(0, static_cast<std::int64_t>(passages_.size()) - 1))];
    }

    ExtremeFolder extreme_;
    RandomFacts random_;
    std::vector<Id> passages_;
    std::vector<Id> pieces_;
    std::vector<Id> runs_;
    std::string lines_;
    std::size_t made_ = 0;
};

} // namespace

bool writeExtremeFolder(const std::string& folder, const ExtremeFolder& extreme) {
    std::error_code error;
    std::filesystem::create_directories(folder + "/journal", error);
    std::ofstream out(folder + "/journal/" + device + "-2026.jsonl", std::ios::binary);
    out << Writer(extreme).lines();
    return static_cast<bool>(out.flush());
}

} // namespace piolo::test
