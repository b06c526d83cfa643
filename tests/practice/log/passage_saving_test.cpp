// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/passage_saving.h"

#include "../book_fixture.h"

using namespace piolo;
using practice::savePassage;
using test::BookFixture;

namespace {

struct SavingFixture : BookFixture {
    [[nodiscard]] const Passage& recorded(Id id) const {
        const PassageRecord* const record = book->notebook().passage(id);
        REQUIRE(record != nullptr);
        return record->passage;
    }
    /// The facts of passages on disk, in order.
    [[nodiscard]] std::vector<PassageFact> facts() {
        REQUIRE(book->flush(10'000));
        const auto contents = journal::readFolder(path("folder"), device);
        REQUIRE(contents);
        std::vector<PassageFact> found;
        for (const Fact& fact : contents->facts)
            if (const auto* made = std::get_if<PassageFact>(&fact.body)) found.push_back(*made);
        return found;
    }
    Passage fresh() {
        Passage passage;
        passage.id = book->newId();
        passage.title.name = "Letter C";
        passage.tempi.rule.target = Tempo::bpm(96);
        return passage;
    }
};

} // namespace

TEST_CASE_FIXTURE(SavingFixture, "a passage that is not recorded is created with what every passage has") {
    const Passage wanted = fresh();
    savePassage(*book, wanted);
    CHECK(recorded(wanted.id) == wanted);
    REQUIRE(facts().size() == 1);
    const PassageFact fact = facts().front();
    CHECK(fact.title.has_value());
    CHECK(fact.music.has_value());
    CHECK(fact.tempi.has_value());
    CHECK_FALSE(fact.manner.has_value()); // it has nothing to say
}

TEST_CASE_FIXTURE(SavingFixture, "of a recorded passage only the groups that differ are recorded") {
    Passage wanted = fresh();
    savePassage(*book, wanted);
    savePassage(*book, wanted);
    CHECK(facts().size() == 1);
    wanted.tempi.rule.target = Tempo::bpm(104);
    savePassage(*book, wanted);
    REQUIRE(facts().size() == 2);
    const PassageFact fact = facts().back();
    CHECK(fact.tempi.has_value());
    CHECK_FALSE(fact.title.has_value());
    CHECK_FALSE(fact.music.has_value());
    CHECK(recorded(wanted.id) == wanted);
}

TEST_CASE_FIXTURE(SavingFixture, "the origin of a passage stays, whoever saves it") {
    const Passage whole = fresh();
    savePassage(*book, whole);
    Passage part = fresh();
    part.title.origin = whole.id;
    savePassage(*book, part);
    CHECK(recorded(part.id).title.origin == whole.id);
    part.title = Title{"the turn", {}, {}};
    savePassage(*book, part);
    CHECK(recorded(part.id).title == Title{"the turn", {}, whole.id});
}
