// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_copy.h"

#include "command/output/written_file.h"
#include "core/history/notebook.h"
#include "files/whole_file.h"
#include "journal/folder/practice_folder.h"
#include "journal/lines/fact_line.h"
#include "scratch.h"
#include "season.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace piolo;
using namespace piolo::samples;
using piolo::samples::Scratch;

namespace {

const std::string sample = std::string(PIOLO_SOURCE_DIR) + "/samples/spring-concert";

std::vector<Fact> factsIn(const std::string& folder) {
    const auto contents = journal::readFolder(folder, {});
    REQUIRE(contents);
    CHECK(contents->faults.empty());
    std::vector<Fact> facts = contents->facts;
    std::sort(facts.begin(), facts.end(), standsBefore);
    return facts;
}

} // namespace

TEST_CASE("the copy ends on the day before today, whatever today is") {
    const std::vector<Fact> before = samples::playSeason(samples::sampleSeed);
    for (const Date today : {Date{2026, 4, 19}, Date{2026, 11, 25}, Date{2027, 1, 10}, Date{2024, 3, 1}}) {
        CAPTURE(today.text());
        const Scratch scratch;
        const auto copied = copySample(sample, scratch.at("copy"), today);
        REQUIRE(copied);
        CHECK(copied->made);
        const std::vector<Fact> after = factsIn(scratch.at("copy"));
        REQUIRE(after.size() == before.size());
        CHECK(copied->facts == before.size());
        CHECK(after.back().at.date().daysSince1970() == today.daysSince1970() - 1);
        for (std::size_t i = 0; i < after.size(); ++i) {
            CHECK(after[i].id == before[i].id);
            CHECK(after[i].at.date().daysSince1970() - before[i].at.date().daysSince1970() == copied->days);
            CHECK(after[i].at.text().substr(10) == before[i].at.text().substr(10));
        }
    }
}

TEST_CASE("only dates differ: the copy moved back is the sample") {
    const std::vector<Fact> before = samples::playSeason(samples::sampleSeed);
    CHECK(movedByDays(movedByDays(before, 200), -200) == before);
    CHECK(movedByDays(before, 1) != before);
    CHECK(movedByDays(before, 0) == before);
}

TEST_CASE("the concert stays as many days away") {
    const Scratch scratch;
    REQUIRE(copySample(sample, scratch.at("copy"), {2026, 12, 20}));
    const Notebook notebook = fold(factsIn(scratch.at("copy")));
    // From the last day, 18 April, to 9 May are 21 days.
    for (const Piece& piece : notebook.pieces())
        CHECK(piece.due->daysSince1970() == Date{2026, 12, 19}.daysSince1970() + 21);
}

TEST_CASE("a copy across the turn of the year has a file for each year") {
    const Scratch scratch;
    REQUIRE(copySample(sample, scratch.at("copy"), {2027, 1, 10}));
    const std::string device = samples::playSeason(samples::sampleSeed).front().device;
    CHECK(std::filesystem::exists(scratch.at("copy/journal/" + device + "-2026.jsonl")));
    CHECK(std::filesystem::exists(scratch.at("copy/journal/" + device + "-2027.jsonl")));
}

TEST_CASE("existing practice in the target is left alone") {
    const Scratch scratch;
    const std::string path = scratch.at("copy/journal/own-2026.jsonl");
    REQUIRE(command::writeInFolder(path, "practised\n"));
    const auto copied = copySample(sample, scratch.at("copy"), {2026, 11, 25});
    REQUIRE(copied);
    CHECK_FALSE(copied->made);
    CHECK(*files::wholeFile(path) == "practised\n");
    const std::filesystem::directory_iterator files(scratch.at("copy/journal"));
    CHECK(std::distance(begin(files), end(files)) == 1);
}

TEST_CASE("a sample that cannot be read completely is not copied") {
    const Scratch scratch;
    REQUIRE(command::writeInFolder(scratch.at("from/journal/a-2026.jsonl"), "not a fact\n"));
    const auto broken = copySample(scratch.at("from"), scratch.at("to"), {2026, 11, 25});
    REQUIRE_FALSE(broken);
    CHECK(broken.fault().number == FaultNumber::badJson);
    CHECK(broken.fault().location.line == 1);
    const auto missing = copySample(scratch.at("nothing"), scratch.at("to"), {2026, 11, 25});
    REQUIRE_FALSE(missing);
    CHECK(missing.fault().number == FaultNumber::cannotRead);
    std::filesystem::create_directories(scratch.at("bare"));
    const auto bare = copySample(scratch.at("bare"), scratch.at("to"), {2026, 11, 25});
    REQUIRE_FALSE(bare);
    CHECK(bare.fault().number == FaultNumber::notAPracticeFolder);
    CHECK_FALSE(std::filesystem::exists(scratch.at("to")));
}
