// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"
#include "core/history/notebook.h"

#include <cstdlib>
#include <doctest/doctest.h>
#include <random>

using namespace piolo;
using namespace piolo::test;

namespace {

const Id passage{1, 1};

// The same marks recorded as facts in a notebook, as the window does.
class Folded {
public:
    explicit Folded(const Tempi& tempi) { add(PassageFact{passage, Title{"Letter C", {}}, Music{}, tempi}); }
    [[nodiscard]] Standing present() const { return notebook_.passage(passage)->standing; }
    void take(const std::string& mark, Tempo tempo) {
        if (mark == "clean")
            return add(RunFact{passage, present().tempo, Mark::clean, Reason::none, RunKind::run, 0, {}});
        if (mark == "miss")
            return add(RunFact{passage, present().tempo, Mark::missed, Reason::none, RunKind::run, 0, {}});
        if (mark != "back") return add(TempoFact{passage, tempo, Reason::hand});
        const Id target = notebook_.backTarget(passage, "a");
        if (!target.isNone()) add(BackFact{passage, target});
    }

private:
    void add(FactBody body) {
        ++count_;
        Fact fact{{2, count_}, "a", count_, static_cast<std::int64_t>(count_), {}, std::move(body)};
        REQUIRE(notebook_.add(std::move(fact)));
    }
    Notebook notebook_;
    std::uint64_t count_ = 0;
};

unsigned seed() {
    const char* given = std::getenv("PIOLO_SEED");
    return given == nullptr ? std::random_device{}()
                            : static_cast<unsigned>(std::strtoul(given, nullptr, 10));
}

} // namespace

TEST_CASE("the ladder gives the same as a notebook with the same marks") {
    const unsigned chosen = seed();
    MESSAGE("PIOLO_SEED=" << chosen);
    std::mt19937 random(chosen);
    const auto draw = [&](int least, int most) { return std::uniform_int_distribution(least, most)(random); };
    for (int round = 0; round < 10; ++round) {
        Tempi tempi;
        tempi.start = Tempo::bpm(draw(50, 90));
        tempi.rule = {draw(0, 1) == 0 ? StepKind::bpm : StepKind::notches,
                      draw(1, 5),
                      draw(1, 5),
                      draw(1, 4),
                      Tempo::bpm(draw(40, 50)),
                      Tempo::bpm(draw(90, 110))};
        Folded folded(tempi);
        Around around;
        std::string expected = "mark,tempo_before,tempo_after,streak_after\n";
        for (int i = 0; i < 200; ++i) {
            const int kind = draw(0, 9);
            const Tempo tempo = Tempo::clampedThousandths(draw(30'000, 130'000));
            const std::string mark = kind < 6   ? "clean"
                                     : kind < 8 ? "miss"
                                     : kind < 9 ? "back"
                                                : "tempo " + tempo.text();
            const Standing before = folded.present();
            folded.take(mark, tempo);
            const Standing after = folded.present();
            around.input += mark + '\n';
            expected += mark + ',' + before.tempo.text() + ',' + after.tempo.text() + ',' +
                        std::to_string(after.streak) + '\n';
        }
        const Rule& rule = tempi.rule;
        const Ended end =
            runPiolo({"ladder", "--start", tempi.start.text(), "--target", rule.target.text(), "--floor",
                      rule.floor.text(), "--drop", std::to_string(rule.drop), "--climb",
                      std::to_string(rule.climb), "--clean-runs", std::to_string(rule.cleanRuns), "--step",
                      rule.step == StepKind::bpm ? "bpm" : "notches"},
                     around);
        CHECK(end.code == 0);
        CHECK(end.out == expected);
    }
}
