// SPDX-License-Identifier: GPL-3.0-or-later
// The sample passage file: what a section leader sends to the second clarinets.
#include "journal/passage_file/passage_file.h"

#include "files/whole_file.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace piolo;

namespace {

const std::string path = std::string(PIOLO_SOURCE_DIR) + "/samples/sectional.piolo.json";

} // namespace

TEST_CASE("the sample passage file is read without a fault and is exactly as it would be written") {
    const auto set = journal::readPassageFile(path);
    REQUIRE(set);
    const auto bytes = files::wholeFile(path);
    REQUIRE(bytes);
    CHECK(journal::passageFileText(*set) == *bytes);
    CHECK(set->pieces.size() == 3);
    CHECK(set->passages.size() == 5);
}

TEST_CASE("the sample passage file shows what a set can contain") {
    const auto set = journal::readPassageFile(path);
    REQUIRE(set);
    const auto some = [&](auto holds) {
        return std::any_of(set->passages.begin(), set->passages.end(), holds);
    };
    CHECK(some([](const Passage& passage) { return passage.title.piece.isNone(); }));
    CHECK(some([](const Passage& passage) { return !passage.music.pickup.isZero(); }));
    CHECK(some([](const Passage& passage) { return passage.tempi.rule.step == StepKind::notches; }));
    CHECK(some([](const Passage& passage) { return passage.click.on == ClickOn::offbeats; }));
    CHECK(some([](const Passage& passage) { return passage.click.barsOff > 0; }));
    CHECK(some([](const Passage& passage) { return !passage.click.breaths.empty(); }));
}
