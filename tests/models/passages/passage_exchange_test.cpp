// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_exchange.h"

#include "../../practice/book_fixture.h"
#include "core/passage/passage_set.h"
#include "journal/passage_file/passage_file.h"
#include "models/text/difference_words.h"

#include <QAbstractItemModelTester>
#include <QCoreApplication>
#include <QFile>
#include <QTest>
#include <QUrl>

#include <sys/stat.h>

using namespace piolo;
using models::PassageExchange;
using models::PassagePicks;
using test::BookFixture;

namespace {

struct Player : BookFixture {
    void read(const std::string& path) {
        exchange.read(QString::fromStdString(path));
        REQUIRE(QTest::qWaitFor([this] { return !exchange.reading(); }, 60'000));
    }
    [[nodiscard]] QVariant at(int row, PassageExchange::Role role) const {
        return exchange.data(exchange.index(row), role);
    }
    PassagePicks picks{*book};
    PassageExchange exchange{*book, picks};
    QAbstractItemModelTester tester{&exchange, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

/// A teacher's file with one piece and two passages.
std::string teachersFile(Player& teacher) {
    const Id piece = teacher.addPiece("Ferrywake Suite");
    teacher.addPassage("Letter C", piece);
    teacher.addPassage("coda", piece);
    teacher.picks.pickAll(true);
    const std::string path = teacher.path("sectional.piolo.json");
    REQUIRE(teacher.exchange.write(QString::fromStdString(path)) == "");
    return path;
}

void edit(Player& player, Id passage, int target) {
    Tempi tempi = player.book->notebook().passage(passage)->passage.tempi;
    tempi.rule.target = Tempo::bpm(target);
    player.book->record(PassageFact{passage, {}, {}, tempi});
}

} // namespace

TEST_CASE("ticked passages are written with their pieces, without any runs") {
    Player player;
    const Id piece = player.addPiece("Ferrywake Suite");
    const Id chosen = player.addPassage("Letter C", piece);
    player.addPassage("coda");
    player.run(chosen, 60);
    player.picks.pickOnly(BookFixture::text(chosen));
    const std::string path = player.path("one.piolo.json");
    CHECK(player.exchange.write(QString::fromStdString(path)) == "");
    const auto set = journal::readPassageFile(path);
    REQUIRE(set);
    CHECK(set->pieces.size() == 1);
    REQUIRE(set->passages.size() == 1);
    CHECK(set->passages.front() == player.book->notebook().passage(chosen)->passage);
}

TEST_CASE("an invalid file name, an invalid location and no tick are reported") {
    Player player;
    CHECK(player.exchange.write("x.piolo.json") == "Tick the passages to export.");
    player.addPassage("coda");
    player.picks.pickAll(true);
    const QString path = QString::fromStdString(player.path("week"));
    CHECK(player.exchange.write(path) == ""); // a name without an ending gets one
    CHECK(QFile::exists(path + ".piolo.json"));
    CHECK(player.exchange.write("x.json").contains(".piolo.json"));
    CHECK(player.exchange.write("/nowhere/x.piolo.json").contains("cannot be written"));
}

TEST_CASE("a file is looked over first, and taken whole into an empty folder") {
    Player teacher;
    const std::string path = teachersFile(teacher);
    Player student;
    student.read(path);
    CHECK(student.exchange.fault() == "");
    CHECK(student.exchange.rowCount() == 3);
    CHECK(student.at(0, PassageExchange::PieceRole).toBool());
    CHECK(student.at(0, PassageExchange::StateRole) == "new");
    CHECK_FALSE(student.at(1, PassageExchange::AskedRole).toBool());
    CHECK(student.exchange.summary() == "3 new, 0 the same, 0 different or removed here");
    CHECK(student.book->notebook().passages().empty());
    student.exchange.take();
    CHECK(student.book->notebook().passages().size() == 2);
    CHECK(student.exchange.summary() == "3 added, 0 replaced from the file, 0 left unchanged.");
    CHECK(wholeSet(student.book->notebook()).value() == wholeSet(teacher.book->notebook()).value());
}

TEST_CASE("the same file twice changes nothing, and says so") {
    Player teacher;
    const std::string path = teachersFile(teacher);
    Player student;
    student.read(path);
    student.exchange.take();
    const std::size_t facts = student.book->notebook().factCount();
    student.read(path);
    CHECK(student.exchange.summary() == "You already have everything in this file: nothing would change.");
    CHECK(student.at(1, PassageExchange::StateRole) == "the same");
    CHECK_FALSE(student.exchange.canTake());
    student.exchange.take();
    CHECK(student.book->notebook().factCount() == facts);
}

TEST_CASE("what differs is reported value by value, and stays until it has a tick") {
    Player teacher;
    const std::string path = teachersFile(teacher);
    Player student;
    student.read(path);
    student.exchange.take();
    const auto ids = student.book->notebook().passages();
    edit(student, ids[0], 88);
    student.book->record(RemovalFact{ids[1]});
    student.read(path);
    const auto target = [&] { return student.book->notebook().passage(ids[0])->passage.tempi.rule.target; };
    int differing = -1;
    for (int row = 0; row < student.exchange.rowCount(); ++row)
        if (student.at(row, PassageExchange::StateRole) == "different") differing = row;
    REQUIRE(differing >= 0);
    CHECK(student.at(differing, PassageExchange::ChangesRole) == "target: 88 → 96");
    CHECK(student.at(differing, PassageExchange::EditedRole).toBool());
    CHECK(student.exchange.asked() == 2);
    CHECK_FALSE(student.exchange.canTake());
    student.exchange.take();
    CHECK(target() == Tempo::bpm(88));
    student.exchange.tick(differing, true);
    CHECK(student.exchange.ticked() == 1);
    student.exchange.take();
    CHECK(target() == Tempo::bpm(96));
    CHECK(student.book->notebook().passage(ids[1])->removed);
    CHECK(student.exchange.summary() == "0 added, 1 replaced from the file, 1 left unchanged.");
    student.read(path);
    student.exchange.tickAll(true);
    CHECK(student.exchange.ticked() == 1);
    student.exchange.tickAll(false);
    CHECK_FALSE(student.exchange.canTake());
    student.exchange.tickAll(true);
    student.exchange.take();
    CHECK_FALSE(student.book->notebook().passage(ids[1])->removed);
}

TEST_CASE("changes made here while a file is reviewed show at once") {
    Player teacher;
    const std::string path = teachersFile(teacher);
    Player student;
    student.read(path);
    student.exchange.take();
    student.read(path);
    CHECK(student.exchange.asked() == 0);
    edit(student, student.book->notebook().passages()[0], 88);
    CHECK(student.exchange.asked() == 1);
    student.exchange.close();
    CHECK(student.exchange.rowCount() == 0);
    CHECK(student.exchange.file() == "");
}

TEST_CASE("a bad file gives one line with its number and imports nothing; a pipe is not a file") {
    Player player;
    player.addPassage("coda");
    const std::size_t facts = player.book->notebook().factCount();
    QFile file(QString::fromStdString(player.path("torn.piolo.json")));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("{\"v\":1,\"pieces\":[");
    file.close();
    const std::string pipe = player.path("pipe.piolo.json");
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    for (const std::string& path :
         {player.path("torn.piolo.json"), player.path("missing.piolo.json"), pipe, player.path("folder")}) {
        player.read(path);
        CAPTURE(path);
        CHECK(player.exchange.fault().startsWith("E"));
        CHECK_FALSE(player.exchange.fault().contains("\n"));
        CHECK(player.exchange.file() == "");
        CHECK(player.exchange.rowCount() == 0);
    }
    CHECK(player.book->notebook().factCount() == facts);
}

TEST_CASE("a file dropped on the window is read by its address, and one at a time") {
    Player teacher;
    const std::string path = teachersFile(teacher);
    Player student;
    student.exchange.read("");
    CHECK_FALSE(student.exchange.reading());
    student.exchange.read(QUrl::fromLocalFile(QString::fromStdString(path)).toString());
    student.exchange.read("/nowhere.piolo.json");
    student.read("");
    CHECK(student.exchange.fault() == "");
    CHECK(student.exchange.rowCount() == 3);
}

TEST_CASE("every value that can differ has a name") {
    Passage from;
    Passage to;
    to.title = {"name", {1, 1}, {1, 2}};
    to.music.meter = Meter::parse("7/8", "1/8", "2+2+3").value();
    to.music.subdivision = 3;
    to.music.pickup = Fraction{1, 8};
    to.music.firstBar = 9;
    to.music.bars = 8;
    to.music.landing = false;
    to.music.countInBars = 2;
    to.music.breathBeats = 4;
    to.tempi.start = Tempo::bpm(61);
    to.tempi.rule = {StepKind::notches, 1, 1, 3, Tempo::bpm(50), Tempo::bpm(99), true};
    to.manner.group = 5;
    to.manner.fingering = "side key";
    to.manner.rhythm = Rhythm::groups;
    to.manner.articulation = Articulation::staccato;
    const auto all = differences(from, to);
    CHECK(all.size() >= 20);
    for (const Difference& difference : all) {
        const QString words = models::differenceWords(difference);
        CAPTURE(words.toStdString());
        CHECK_FALSE(words.startsWith(QString::fromStdString(difference.key) + ":"));
        CHECK(words.contains(" → "));
    }
}
