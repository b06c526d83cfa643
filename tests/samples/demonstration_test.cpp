// SPDX-License-Identifier: GPL-3.0-or-later
// The drill without hands: engine, log and fold all follow the script.
#include "demonstration.h"

#include "command/output/written_file.h"
#include "drill_table.h"
#include "files/wav.h"
#include "files/whole_file.h"
#include "journal/folder/practice_folder.h"
#include "practice/virtual/virtual_drill.h"
#include "sample_copy.h"
#include "scratch.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace piolo;
using namespace piolo::samples;
using piolo::samples::Scratch;

namespace {

const std::string sample = std::string(PIOLO_SOURCE_DIR) + "/samples/spring-concert";
const std::string device(32, 'e');
const Timestamp noon = *Timestamp::parse("2026-04-19T12:00:00.000+02:00");

struct Drilled {
    practice::VirtualDrillResult drill;
    PassageRecord record; ///< folded from disk
};

Drilled drilled(const Scratch& scratch, const std::string& script) {
    REQUIRE(copySample(sample, scratch.at("folder"), noon.date()));
    auto drill = practice::drillVirtually({scratch.at("folder"), device, scratch.at("state")},
                                          demonstrationPassage, script, noon);
    REQUIRE(drill);
    const auto contents = journal::readFolder(scratch.at("folder"), device);
    REQUIRE(contents);
    CHECK(contents->faults.empty());
    const Notebook notebook = fold(contents->facts);
    return {std::move(drill).value(), *notebook.passage(notebook.find(demonstrationPassage).front())};
}

} // namespace

TEST_CASE("the script is played: marks, the climb, the drop and the late miss from before its run") {
    const Scratch scratch;
    const auto [drill, record] = drilled(scratch, "cccccccmcccclc");
    REQUIRE(drill.runs.size() == 14);
    const std::int32_t opened = drill.runs.front().tempo.thousandths();
    const auto at = [&](std::size_t run) { return drill.runs[run].tempo.thousandths() - opened; };
    CHECK(at(4) == 0);
    CHECK(drill.runs[4].after.streak == 0);
    CHECK(at(5) == 2'000);
    CHECK(drill.runs[7].mark == Mark::missed);
    CHECK_FALSE(drill.runs[7].late);
    CHECK(at(8) == -2'000);
    // Four clean runs in a row, then a run that ended clean but was missed after all: down, not up.
    CHECK(drill.runs[11].after.streak == 4);
    CHECK(drill.runs[12].late);
    CHECK(drill.runs[12].mark == Mark::missed);
    CHECK(at(12) == -2'000);
    CHECK(at(13) == -6'000);
    CHECK(disagreement(drill, record, noon.date()).empty());
}

TEST_CASE("a missed run has its place, in the part's own bar numbers") {
    const Scratch scratch;
    const auto [drill, record] = drilled(scratch, "cm");
    const Entry& missed = record.entries.back();
    REQUIRE(missed.spots.size() == 1);
    CHECK(missed.spots.front().bar == 43);
    CHECK(missed.spots.front().beat == 3);
}

TEST_CASE("the day opens by a fact of its own, before the first run") {
    const Scratch scratch;
    const auto [drill, record] = drilled(scratch, "c");
    REQUIRE(record.entries.size() >= 2);
    const Entry& opening = record.entries[record.entries.size() - 2];
    CHECK(opening.kind == Entry::Kind::tempo);
    CHECK(opening.reason == Reason::newDay);
    CHECK(opening.tempo == drill.runs.front().tempo);
}

TEST_CASE("the same script gives the same sound, a different one a different sound") {
    const Scratch first;
    const auto a = drilled(first, "cm").drill.sound;
    const Scratch second;
    CHECK(a == drilled(second, "cm").drill.sound);
    const Scratch third;
    CHECK(a != drilled(third, "cc").drill.sound);
    CHECK(std::any_of(a.begin(), a.end(), [](float sample_) { return sample_ > 0.01F; }));
}

TEST_CASE("a difference between engine, log and fold is reported") {
    const Scratch scratch;
    const auto [drill, record] = drilled(scratch, "cm");
    CHECK(disagreement(drill, record, noon.date()).empty());
    practice::VirtualDrillResult other = drill;
    other.runs[1].mark = Mark::clean;
    CHECK_FALSE(disagreement(other, record, noon.date()).empty());
    other = drill;
    other.runs[0].after.streak += 1;
    CHECK_FALSE(disagreement(other, record, noon.date()).empty());
    other = drill;
    other.runs.pop_back();
    CHECK_FALSE(disagreement(other, record, noon.date()).empty());
    other = drill;
    other.standing.tempo = Tempo::bpm(200);
    CHECK_FALSE(disagreement(other, record, noon.date()).empty());
    other = drill;
    other.saved = false;
    CHECK_FALSE(disagreement(other, record, noon.date()).empty());
    PassageRecord altered = record;
    altered.entries.list().back().tempo = Tempo::bpm(10);
    CHECK_FALSE(disagreement(drill, altered, noon.date()).empty());
}

TEST_CASE("an unknown passage is a fault") {
    const Scratch scratch;
    REQUIRE(copySample(sample, scratch.at("folder"), noon.date()));
    const auto drill =
        practice::drillVirtually({scratch.at("folder"), device, scratch.at("state")}, "no such", "c", noon);
    REQUIRE_FALSE(drill);
    CHECK(drill.fault().number == FaultNumber::noSuchPassage);
}

TEST_CASE("the demonstration leaves a click, a curve and a practice folder, and does so again") {
    const Scratch scratch;
    for (int time = 0; time < 2; ++time) {
        REQUIRE(runDemonstration(sample, scratch.at("out"), noon) == 0);
        const auto click = files::readWav(scratch.at("out/click.wav"));
        REQUIRE(click);
        CHECK(click->rate == 48'000);
        CHECK(click->samples.size() > 48'000U * 60U);
        CHECK(files::wholeFile(scratch.at("out/curve.png"))->substr(1, 3) == "PNG");
        CHECK(*files::wholeFile(scratch.at("out/passage")) == std::string(demonstrationPassage) + '\n');
        const auto contents = journal::readFolder(scratch.at("out/drilled"), device);
        const Notebook notebook = fold(contents->facts);
        CHECK(notebook.day(noon.date(), {}).runs == 15);
    }
}

TEST_CASE("a demonstration without its sample exits with 1") {
    const Scratch scratch;
    CHECK(runDemonstration(scratch.at("nothing"), scratch.at("out"), noon) == 1);
}

TEST_CASE("a demonstration never touches other practice in its folder") {
    const Scratch scratch;
    REQUIRE(copySample(sample, scratch.at("out/drilled"), noon.date()));
    const std::string own = scratch.at("out/drilled/journal/" + device + "-2026.jsonl");
    REQUIRE(command::writeInFolder(own, ""));
    CHECK(runDemonstration(sample, scratch.at("out"), noon) == 1);
    const std::filesystem::directory_iterator files(scratch.at("out/drilled/journal"));
    CHECK(std::distance(begin(files), end(files)) == 2);
}
