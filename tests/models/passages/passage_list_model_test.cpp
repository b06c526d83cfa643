// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_list_model.h"

#include "../../practice/book_fixture.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

using namespace piolo;
using models::PassageListModel;
using test::BookFixture;

namespace {

struct ListFixture : BookFixture {
    PassageListModel list{*book};
    QAbstractItemModelTester tester{&list, QAbstractItemModelTester::FailureReportingMode::Fatal};

    [[nodiscard]] QVariant at(int row, PassageListModel::Role role) const {
        return list.data(list.index(row), role);
    }
    [[nodiscard]] std::string titles() const {
        QStringList all;
        for (int row = 0; row < list.rowCount(); ++row) all << at(row, PassageListModel::Title).toString();
        return all.join(", ").toStdString();
    }
};

} // namespace

TEST_CASE_FIXTURE(ListFixture, "an empty folder gives an empty list") {
    CHECK(list.rowCount() == 0);
    CHECK(list.total() == 0);
    CHECK(list.rowOf("none such") == -1);
    CHECK(list.idAt(0).isEmpty());
    list.remove("none such");
    list.restore("none such");
    CHECK(book->notebook().factCount() == 0);
}

TEST_CASE_FIXTURE(ListFixture, "by date: the next piece first, undated pieces after, exercises last") {
    addPassage("Chromatic run");
    addPassage("coda", addPiece("Overture for a Fair"));
    const Id later = addPiece("March Home", Date{2026, 6, 20});
    addPassage("trio", later);
    const Id sooner = addPiece("River Suite", Date{2026, 5, 12});
    addPassage("II, bars 41–44", sooner, 41);
    addPassage("I, bars 9–16", sooner, 9);
    CHECK(titles() == "I, bars 9–16, II, bars 41–44, trio, coda, Chromatic run");
    CHECK(list.sectionTitle(at(0, PassageListModel::Section).toString()) == "River Suite");
    CHECK(list.sectionDue(at(0, PassageListModel::Section).toString()) == "12 May · in 72 days");
    CHECK(list.sectionDue(at(3, PassageListModel::Section).toString()) == "");
    CHECK(list.sectionTitle(at(4, PassageListModel::Section).toString()) == "No piece");
}

TEST_CASE_FIXTURE(ListFixture, "longest rested: never played first, then the longest ago") {
    const Id old = addPassage("old");
    const Id fresh = addPassage("fresh");
    addPassage("never");
    run(old, 60);
    clock->nextDay();
    run(fresh, 60);
    list.setSorting("notPlayed");
    CHECK(titles() == "never, old, fresh");
    CHECK(at(0, PassageListModel::StandingText) == "not played yet");
    CHECK(at(1, PassageListModel::StandingText) == "played yesterday");
    CHECK(at(2, PassageListModel::StandingText) == "played today");
    CHECK(at(0, PassageListModel::Section) == "");
}

TEST_CASE_FIXTURE(ListFixture,
                  "most to climb: the least of the way first; the way goes from start to target") {
    const Id near = addPassage("near");
    const Id far = addPassage("far");
    run(near, 87);
    run(far, 60);
    list.setSorting("farFromTarget");
    CHECK(titles() == "far, near");
    CHECK(at(0, PassageListModel::Share).toDouble() == doctest::Approx(0.0));
    CHECK(at(1, PassageListModel::Share).toDouble() == doctest::Approx((87.0 - 60.0) / (96.0 - 60.0)));
    list.setSorting("no such order");
    CHECK(list.sorting() == "farFromTarget");
}

TEST_CASE_FIXTURE(ListFixture, "a run changes its row and nothing else") {
    addPassage("other", {}, 1);
    const Id played = addPassage("played", {}, 9);
    QSignalSpy changes(&list, &QAbstractItemModel::dataChanged);
    QSignalSpy resets(&list, &QAbstractItemModel::modelReset);
    run(played, 60);
    REQUIRE(changes.size() == 1);
    CHECK(changes[0][0].toModelIndex().row() == list.rowOf(text(played)));
    CHECK(resets.isEmpty());
    CHECK(at(1, PassageListModel::Streak) == 1);
    CHECK(at(1, PassageListModel::TempoText) == "60");
    CHECK(at(1, PassageListModel::TargetText) == "96");
}

TEST_CASE_FIXTURE(ListFixture, "every word searched for must be there, whatever the case") {
    const Id piece = addPiece("River Suite");
    addPassage("opening", piece, 9);
    addPassage("run to the top");
    list.setSearch("SUITE bars");
    CHECK(titles() == "opening");
    list.setSearch("suite top");
    CHECK(list.rowCount() == 0);
    CHECK(list.total() == 2);
    list.setSearch("");
    CHECK(list.rowCount() == 2);
}

TEST_CASE_FIXTURE(ListFixture, "a removal hides the passage until it is taken back") {
    const Id id = addPassage("coda");
    list.remove(text(id));
    CHECK(list.rowCount() == 0);
    list.setRemovedToo(true);
    REQUIRE(list.rowCount() == 1);
    CHECK(at(0, PassageListModel::Removed) == true);
    const auto facts = book->notebook().factCount();
    list.remove(text(id));
    CHECK(book->notebook().factCount() == facts);
    list.restore(text(id));
    CHECK(at(0, PassageListModel::Removed) == false);
}

TEST_CASE_FIXTURE(ListFixture, "secure on as many days as the setting asks makes the passage secure") {
    const Id id = addPassage("coda");
    for (int day = 0; day < 3; ++day) {
        CHECK(at(0, PassageListModel::Secure) == false);
        for (int n = 0; n < 5; ++n) run(id, 96);
        clock->nextDay();
    }
    CHECK(at(0, PassageListModel::Secure) == true);
    CHECK(at(0, PassageListModel::StandingText) == "secure on 3 days");
    CHECK(at(0, PassageListModel::Spoken).toString().contains("at 96 of 96"));
}
