// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/figures/worst_passages.h"

#include "../book_fixture.h"

using namespace piolo;
using practice::WorstPassage;
using practice::worstPassages;
using test::BookFixture;

namespace {

struct WorstFixture : BookFixture {
    void play(Id passage, int clean, int missed, std::int32_t bar = 2) {
        for (int i = 0; i < clean; ++i) run(passage, 60);
        for (int i = 0; i < missed; ++i)
            book->record(RunFact{
                passage, Tempo::bpm(60), Mark::missed, Reason::none, RunKind::run, 8'000, {{bar, 3}}});
    }
    [[nodiscard]] std::vector<WorstPassage> worst(Id piece = {}, std::size_t most = 4) const {
        return worstPassages(book->notebook(), piece, book->today(), most);
    }
};

} // namespace

TEST_CASE_FIXTURE(WorstFixture, "passages stand by their share of clean runs, worst first, with the bar that "
                                "has most of the misses") {
    const Id better = addPassage("better");
    const Id worse = addPassage("worse");
    const Id middle = addPassage("middle");
    play(better, 9, 1);
    play(worse, 2, 6);
    play(worse, 0, 1, 4);
    play(middle, 5, 5, 3);
    const auto found = worst();
    REQUIRE(found.size() == 3);
    CHECK(found[0].passage == worse);
    CHECK(found[0].runs == 9);
    CHECK(found[0].clean == 2);
    CHECK(found[0].bar == 2);
    CHECK(found[1].passage == middle);
    CHECK(found[1].bar == 3);
    CHECK(found[2].passage == better);
    CHECK_FALSE(found[2].bar); // one miss says nothing about a bar
    CHECK(worst({}, 2).size() == 2);
}

TEST_CASE_FIXTURE(WorstFixture,
                  "of equal shares, the one with more misses is worse, then the one made first") {
    const Id first = addPassage("first");
    const Id second = addPassage("second");
    const Id longer = addPassage("longer");
    play(first, 3, 3);
    play(second, 3, 3);
    play(longer, 6, 6);
    const auto found = worst();
    REQUIRE(found.size() == 3);
    CHECK(found[0].passage == longer);
    CHECK(found[1].passage == first);
    CHECK(found[2].passage == second);
}

TEST_CASE_FIXTURE(WorstFixture, "few runs, no miss, a removal, other kinds of runs and two weeks without "
                                "practice leave a passage out") {
    play(addPassage("few"), 0, 4);
    play(addPassage("all clean"), 20, 0);
    const Id removed = addPassage("removed");
    play(removed, 0, 9);
    book->record(RemovalFact{removed, true});
    const Id apart = addPassage("apart");
    for (int i = 0; i < 9; ++i)
        book->record(RunFact{apart, Tempo::bpm(60), Mark::missed, Reason::none, RunKind::silent, 8'000, {}});
    CHECK(worst().empty());
    const Id rested = addPassage("rested");
    play(rested, 0, 9);
    for (int days = 0; days < 13; ++days) clock->nextDay();
    CHECK(worst().size() == 1);
    clock->nextDay();
    CHECK(worst().empty());
}

TEST_CASE_FIXTURE(WorstFixture,
                  "only passages of the piece are named if one is chosen, and a corrected mark counts") {
    const Id suite = addPiece("River Suite");
    const Id coda = addPassage("coda", suite);
    play(addPassage("scale"), 0, 9);
    play(coda, 4, 1);
    REQUIRE(worst(suite).size() == 1);
    CHECK(worst(suite)[0].passage == coda);
    book->record(CorrectionFact{coda, book->notebook().passage(coda)->entries.back().id, Mark::clean});
    CHECK(worst(suite).empty());
}
