// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/ladder_model.h"

#include <doctest/doctest.h>

#include <QAbstractItemModelTester>

using namespace piolo;
using piolo::models::LadderModel;

namespace {

Tempi tempi() {
    Tempi tempi;
    tempi.start = Tempo::bpm(72);
    tempi.rule.floor = Tempo::bpm(68);
    tempi.rule.target = Tempo::bpm(81);
    return tempi;
}

QString tempoAt(const LadderModel& ladder, int row) {
    return ladder.data(ladder.index(row), LadderModel::tempoRole).toString();
}

} // namespace

TEST_CASE("the ladder goes from the floor to the target, with its last step shortened") {
    LadderModel ladder;
    const QAbstractItemModelTester tester(&ladder, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ladder.show(tempi(), Tempo::bpm(72), {});
    CHECK(ladder.count() == 8); // 68 70 72 … 80 81
    CHECK(tempoAt(ladder, 0) == "68");
    CHECK(tempoAt(ladder, 7) == "81");
    CHECK(ladder.presentRow() == 2);
}

TEST_CASE("a climb moves the current rung and leaves the others") {
    LadderModel ladder;
    const QAbstractItemModelTester tester(&ladder, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ladder.show(tempi(), Tempo::bpm(72), {});
    int resets = 0;
    QObject::connect(&ladder, &QAbstractItemModel::modelReset, [&] { ++resets; });
    ladder.show(tempi(), Tempo::bpm(74), Tempo::bpm(72));
    CHECK(resets == 0);
    CHECK(ladder.presentRow() == 3);
    CHECK(ladder.data(ladder.index(2), LadderModel::bestRole).toBool());
    CHECK(ladder.data(ladder.index(7), LadderModel::targetRole).toBool());
}

TEST_CASE("a tempo between rungs is a rung of its own while it is the current one") {
    LadderModel ladder;
    const QAbstractItemModelTester tester(&ladder, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ladder.show(tempi(), Tempo::bpm(73), {});
    CHECK(tempoAt(ladder, ladder.presentRow()) == "73");
    ladder.show(tempi(), Tempo::bpm(40), {});
    CHECK(ladder.presentRow() == 0);
}
