// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/fact_line.h"

#include "bare_line.h"
#include "random_facts.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::bareLine;
using piolo::test::RandomFacts;
using piolo::test::seedOfTest;

namespace {

constexpr std::size_t kinds = std::variant_size_v<FactBody>;
const Id passage{0, 0xAB};

std::string lineOf(FactBody body) {
    Fact fact;
    fact.id = {1, 2};
    fact.device = "0123456789abcdef0123456789abcdef";
    fact.seq = 3;
    fact.order = 1'772'384'645'123;
    fact.at = *Timestamp::parse("2026-03-01T18:04:05.123+01:00");
    fact.body = std::move(body);
    return bareLine(fact);
}

std::string expected(const std::string& kindAndRest) {
    return R"({"v":1,"id":"00000000000000010000000000000002","device":"0123456789abcdef0123456789abcdef","seq":3,)"
           R"("order":1772384645123,"at":"2026-03-01T18:04:05.123+01:00","kind":)" +
           kindAndRest + "}";
}

const std::string aPassage = R"("passage":"000000000000000000000000000000ab")";

} // namespace

TEST_CASE("every fact comes back from its line as it was") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    for (int round = 0; round < 300; ++round)
        for (std::size_t kind = 0; kind < kinds; ++kind) {
            const Fact fact = random.fact(kind);
            const std::string line = toLine(fact);
            CAPTURE(line);
            REQUIRE(line.find('\n') == std::string::npos);
            const auto read = fromLine(line, {"x", 1});
            REQUIRE(read.ok());
            CHECK(*read == fact);
        }
}

TEST_CASE("keys are in a fixed order: those of every fact, then the kind's own") {
    RunFact run{passage, *Tempo::fromThousandths(84'500), Mark::voided, Reason::stopped, RunKind::attempt,
                8123,    {{0, 4}, {12, 1, 250}}};
    CHECK(lineOf(run) == expected(R"("run",)" + aPassage +
                                  R"(,"tempo":84500,"mark":"void","reason":"stopped","try":true,"ms":8123,)"
                                  R"("spots":[[0,4],[12,1,250]])"));
    CHECK(lineOf(LateMissFact{passage, {0, 1}}) ==
          expected(R"("late",)" + aPassage + R"(,"run":"00000000000000000000000000000001")"));
    CHECK(lineOf(DoubtFact{passage, {{0, 1}}}) ==
          expected(R"("doubt",)" + aPassage + R"(,"runs":["00000000000000000000000000000001"])"));
    CHECK(lineOf(TempoFact{passage, Tempo::bpm(80), Reason::newDay}) ==
          expected(R"("tempo",)" + aPassage + R"(,"tempo":80000,"reason":"newDay")"));
    CHECK(lineOf(BackFact{passage, {0, 1}}) ==
          expected(R"("back",)" + aPassage + R"(,"retracts":"00000000000000000000000000000001")"));
    CHECK(lineOf(RemovalFact{passage, false}) ==
          expected(R"("removal","subject":"000000000000000000000000000000ab","removed":false)"));
    CHECK(lineOf(SettingsFact{}) ==
          expected(R"("settings","gapMs":4000,"playOn":false,"pauseAfterRuns":20,"secureDays":3,)"
                   R"("dayOpening":"twoRungsBelow","reactionMs":250)"));
    CHECK(lineOf(StageFact{passage, Stage::withoutClick}) ==
          expected(R"("stage",)" + aPassage + R"(,"stage":"withoutClick")"));
    CHECK(lineOf(NoteFact{passage, {0, 1}, "Reed too hard"}) ==
          expected(R"("note",)" + aPassage +
                   R"(,"about":"00000000000000000000000000000001","text":"Reed too hard")"));
    CHECK(lineOf(RunThroughFact{passage, Tempo::bpm(96), 180'000, true, {{31, 44'000}}}) ==
          expected(R"("runThrough","piece":"000000000000000000000000000000ab","tempo":96000,"ms":180000,)"
                   R"("finished":true,"stops":[[31,44000]])"));
    CHECK(lineOf(RunThroughFact{passage, {}, 9, false, {}}) ==
          expected(R"("runThrough","piece":"000000000000000000000000000000ab","ms":9,"finished":false)"));
}

TEST_CASE("a clean run has no reason, no try and no spots in its line") {
    CHECK(lineOf(RunFact{passage, Tempo::bpm(60), Mark::clean, Reason::none, RunKind::run, 4000, {}}) ==
          expected(R"("run",)" + aPassage + R"(,"tempo":60000,"mark":"clean","ms":4000)"));
}

TEST_CASE("a try has its own key, and any other purpose of a run is in its line") {
    const auto line = [](RunKind kind) {
        return lineOf(RunFact{passage, Tempo::bpm(60), Mark::clean, Reason::none, kind, 4000, {}});
    };
    const auto with = [](const std::string& key) {
        return expected(R"("run",)" + aPassage + R"(,"tempo":60000,"mark":"clean",)" + key + R"(,"ms":4000)");
    };
    CHECK(line(RunKind::attempt) == with(R"("try":true)"));
    CHECK(line(RunKind::silent) == with(R"("as":"silent")"));
    CHECK(line(RunKind::context) == with(R"("as":"context")"));
    CHECK(line(RunKind::aside) == with(R"("as":"aside")"));
}

TEST_CASE("a passage's line contains only the groups that changed") {
    CHECK(lineOf(PassageFact{passage, {}, {}, {}}) == expected(R"("passage",)" + aPassage));
    Music music;
    music.meter = Meter::parse("7/8", "1/8", "").value();
    music.pickup = {1, 8};
    CHECK(lineOf(PassageFact{passage, Title{"Trio", {0, 5}}, music, Tempi{}}) ==
          expected(R"("passage",)" + aPassage +
                   R"(,"title":{"name":"Trio","piece":"00000000000000000000000000000005"},)"
                   R"("music":{"meter":"7/8","beat":"1/8","groups":"2+2+3","subdivision":1,"pickup":"1/8",)"
                   R"("firstBar":1,"bars":4,"landing":true,"countInBars":1,"breathBeats":2},)"
                   R"("tempi":{"start":60000,"target":120000,"floor":40000,"step":"bpm","drop":4,"climb":2,)"
                   R"("cleanRuns":5})"));
}

TEST_CASE("a click's line has accents, swing and breath places only if there are any") {
    const std::string numbers = R"("barsOn":1,"barsOff":0,"silentBars":0,"leftOutBeats":0,"seed":1)";
    CHECK(lineOf(PassageFact{passage, {}, {}, {}, ClickPattern{}}) ==
          expected(R"("passage",)" + aPassage + R"(,"click":{"on":"beats",)" + numbers + "}"));
    ClickPattern click;
    click.on = ClickOn::downbeats;
    click.accents = {Accent::strong, Accent::silent};
    click.swing = {2, 1};
    click.breaths = {{3, 1, 2}, {5, 4, 1}};
    click.breathBelow = Tempo::bpm(84);
    CHECK(lineOf(PassageFact{passage, {}, {}, {}, click}) ==
          expected(
              R"("passage",)" + aPassage +
              R"(,"click":{"on":"downbeats","accents":["strong","silent"],"swing":"2:1","swung":"eighths",)" +
              numbers + R"(,"breaths":[[3,1,2],[5,4,1]],"breathBelow":84000})"));
}

TEST_CASE("a removed due date is null; an unchanged one is left out") {
    const std::string aPiece = R"("piece","piece":"000000000000000000000000000000ab")";
    CHECK(lineOf(PieceFact{passage, {}, {}, {}}) == expected(aPiece));
    CHECK(lineOf(PieceFact{passage, "March", "Clarinet in B♭", std::optional<Date>{Date{2026, 5, 30}}}) ==
          expected(aPiece + R"(,"name":"March","instrument":"Clarinet in B♭","due":"2026-05-30")"));
    PieceFact more{passage, {}, {}, {}, "Ada Finch", -2, 148, {}, "Cue: oboe"};
    more.music = PieceMusic{Meter::parse("6/8", "3/8", "").value(), Tempo::bpm(96)};
    CHECK(lineOf(more) ==
          expected(aPiece + R"(,"composer":"Ada Finch","transposition":-2,"bars":148,)"
                            R"("music":{"meter":"6/8","beat":"3/8","tempo":96000},"notes":"Cue: oboe")"));
    CHECK(lineOf(PieceFact{passage, {}, {}, std::optional<Date>{}}) == expected(aPiece + R"(,"due":null)"));
}

TEST_CASE("text that is not UTF-8 is written as valid text, so that the line can be read") {
    const auto read = fromLine(lineOf(PassageFact{passage, Title{"bad \xFF byte", {}}, {}, {}}), {});
    REQUIRE(read.ok());
    CHECK(std::get<PassageFact>(read->body).title->name == "bad \xEF\xBF\xBD byte");
}

TEST_CASE("keys in any order, white space and unknown keys are accepted") {
    const auto read = fromLine(
        R"( { "later": [1, {"x": null}], "ms": 5, "mark": "missed", "tempo": 90000, "colour": "blue",)"
        R"( "passage": "000000000000000000000000000000AB", "kind": "run", "at": "2026-03-01T17:04:05Z",)"
        R"( "order": 9, "seq": 1, "device": "0123456789ABCDEF0123456789ABCDEF",)"
        R"( "id": "00000000000000010000000000000002", "v": 1 } )",
        {});
    REQUIRE(read.ok());
    CHECK(read->device == "0123456789abcdef0123456789abcdef");
    CHECK(std::get<RunFact>(read->body).mark == Mark::missed);
}

TEST_CASE("if a key occurs twice, the last one counts") {
    const std::string line = lineOf(RemovalFact{passage, false});
    const auto read = fromLine(line.substr(0, line.size() - 1) + R"(,"removed":true})", {});
    REQUIRE(read.ok());
    CHECK(std::get<RemovalFact>(read->body).removed);
}
