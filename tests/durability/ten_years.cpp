// SPDX-License-Identifier: GPL-3.0-or-later
#include "ten_years.h"

#include "core/history/fact.h"
#include "core/rule/rule.h"
#include "journal/folder/own_file.h"
#include "journal/lines/fact_line.h"

#include <filesystem>
#include <fstream>
#include <random>
#include <utility>
#include <vector>

namespace piolo::test {

namespace {

constexpr std::int64_t dayMillis = 86'400'000;
constexpr std::int64_t firstEvening = 1'767'290'400'000; // 2026-01-01 18:00 UTC
constexpr long runsADay = 100;
constexpr int atATime = 8;          ///< passages being practised
constexpr long daysOfAPassage = 60; ///< after which another passage takes its place

/// A passage being practised and its standing.
struct Work {
    Id id;
    Tempi tempi;
    Standing standing;
    long lastDay = -1;
};

class Player {
public:
    Player(std::string folder, std::uint64_t seed) : folder_(std::move(folder)), random_(seed) {}

    bool play(long runs) {
        for (int i = 0; i < atATime; ++i) works_.push_back(begun(i));
        for (long run = 0; run < runs; ++run) {
            if (run % runsADay == 0) openDay(run / runsADay);
            if (run % 12 == 0) work_ = static_cast<std::size_t>(below(atATime));
            playOnce(works_[work_]);
        }
        return out_.good();
    }

private:
    std::int64_t below(std::int64_t count) {
        return static_cast<std::int64_t>(random_() % static_cast<std::uint64_t>(count));
    }
    Id newId() {
        const std::uint64_t high = random_();
        return {high, random_() | 1U};
    }

    Work begun(int number) {
        Work work;
        work.id = newId();
        work.tempi.start = Tempo::bpm(static_cast<int>(60 + 4 * below(6)));
        work.tempi.rule.target = Tempo::bpm(static_cast<int>(100 + 4 * below(12)));
        work.standing = handSet(work.tempi.start);
        Music music;
        music.firstBar = static_cast<std::int32_t>(1 + below(200));
        music.subdivision = static_cast<std::int32_t>(1 + below(4));
        record(PassageFact{work.id,
                           Title{"Study " + std::to_string(++made_) + ", line " + std::to_string(number), {}},
                           music, work.tempi});
        return work;
    }

    void openDay(long day) {
        now_ = firstEvening + day * dayMillis;
        if (day == 0 || day % (daysOfAPassage / atATime) != 0) return;
        auto& oldest = works_[static_cast<std::size_t>(day / (daysOfAPassage / atATime)) % works_.size()];
        if (below(3) == 0) record(RemovalFact{oldest.id, true}); // most stay in the list
        oldest = begun(static_cast<int>(below(9)));
    }

    void playOnce(Work& work) {
        const long today = static_cast<long>((now_ - firstEvening) / dayMillis);
        if (work.lastDay != today) newDay(work);
        work.lastDay = today;
        const bool clean = below(100) < 80;
        RunFact run{work.id, work.standing.tempo, clean ? Mark::clean : Mark::missed, {}, RunKind::run, 0,
                    {}};
        run.millis = clean ? 16'000 : below(16'000);
        if (!clean)
            run.spots.push_back(
                {static_cast<std::int32_t>(1 + below(4)), static_cast<std::int32_t>(1 + below(4))});
        now_ += 20'000 + below(9000);
        const Standing before = work.standing;
        const Id id = record(run);
        work.standing = afterRun(before, run.tempo, run.mark, work.tempi.rule).after;
        if (below(100) >= 2) return;
        record(BackFact{work.id, id});
        work.standing = before;
    }

    void newDay(Work& work) {
        work.standing.streak = 0;
        if (work.lastDay < 0) return;
        work.standing = handSet(stepDown(work.standing.tempo, StepKind::bpm, 4));
        record(TempoFact{work.id, work.standing.tempo, Reason::newDay});
    }

    Id record(FactBody body) {
        Fact fact{newId(),    deviceOfTenYears(), ++seq_, std::max(now_, order_ + 1),
                  {now_, 60}, std::move(body)};
        order_ = fact.order;
        const auto path = journal::ownFile(folder_, fact.device, fact.at.date());
        if (path != path_) {
            out_ = std::ofstream(path, std::ios::binary);
            path_ = path;
        }
        out_ << journal::toLine(fact) << '\n';
        return fact.id;
    }

    std::string folder_;
    std::mt19937_64 random_;
    std::vector<Work> works_;
    std::size_t work_ = 0;
    int made_ = 0;
    std::int64_t now_ = firstEvening;
    std::int64_t order_ = 0;
    std::uint64_t seq_ = 0;
    std::string path_;
    std::ofstream out_;
};

} // namespace

std::string deviceOfTenYears() { return "7e57ed00000000000000000000001851"; }

std::int64_t endOf(const TenYears& years) { return firstEvening + (years.runs / runsADay + 1) * dayMillis; }

bool writeTenYears(const std::string& folder, const TenYears& years) {
    std::error_code error;
    std::filesystem::create_directories(journal::journalFolder(folder), error);
    return !error && Player(folder, years.seed).play(years.runs);
}

} // namespace piolo::test
