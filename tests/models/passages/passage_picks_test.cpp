// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_picks.h"

#include "../../practice/book_fixture.h"
#include "journal/passage_file/passage_file.h"
#include "models/passages/passage_exchange.h"
#include "models/scales/scale_board.h"

#include <QAbstractItemModelTester>

using namespace piolo;
using models::PassageExchange;
using models::PassagePicks;
using test::BookFixture;

namespace {

/// Two passages and the scale of one cell.
struct Ticking : BookFixture {
    Ticking() {
        addPassage("Letter C", addPiece("Ferrywake Suite"));
        addPassage("coda");
        models::ScaleBoard board(*book);
        board.choices()->setInstrument("alto saxophone");
        board.choose(0, 0);
        scale = board.passageToDrill();
        addPiece("A march without a passage");
    }
    [[nodiscard]] PassageSet written() {
        const std::string file = path("week.piolo.json");
        REQUIRE(exchange.write(QString::fromStdString(file)) == "");
        const auto set = journal::readPassageFile(file);
        REQUIRE(set);
        return *set;
    }
    QString scale;
    PassagePicks picks{*book};
    PassageExchange exchange{*book, picks};
    QAbstractItemModelTester tester{&picks, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_CASE("scales do not count as passages, and are in the list only when asked for, after them") {
    Ticking player;
    CHECK(player.picks.count() == 2);
    CHECK(player.picks.scales() == 1);
    player.picks.pickAll(true);
    CHECK(player.picks.words() == "2 of 2 passages");
    player.picks.setWithScales(true);
    CHECK(player.picks.count() == 3);
    CHECK(player.picks.words() == "2 of 2 passages, 0 of 1 scale");
    player.picks.pick(2, true);
    CHECK(player.picks.words() == "2 of 2 passages, 1 of 1 scale");
    player.picks.setWithScales(false);
    CHECK(player.picks.picked() == 2);
    player.picks.pickOnly(player.scale);
    CHECK(player.picks.words() == "0 of 2 passages, 1 of 1 scale");
}

TEST_CASE("all passages are written with all pieces, and with the scales only when they are ticked") {
    Ticking player;
    player.picks.pickAll(true);
    CHECK(player.written().passages.size() == 2);
    CHECK(player.written().pieces.size() == 2);
    player.picks.setWithScales(true);
    player.picks.pickAll(true);
    CHECK(player.written().passages.size() == 3);
}
