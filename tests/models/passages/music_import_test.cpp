// SPDX-License-Identifier: GPL-3.0-or-later
#include "../../practice/book_fixture.h"
#include "models/passages/passage_editor.h"

#include <QUrl>
#include <doctest/doctest.h>

using namespace piolo;
using models::MusicImport;
using models::PassageEditor;
using test::BookFixture;

namespace {

const QString ferrywake = QStringLiteral(PIOLO_SOURCE_DIR "/samples/ferrywake.musicxml");

} // namespace

TEST_CASE("a music file shows its title, parts and bars, and its first bars are picked") {
    MusicImport music;
    music.read(ferrywake);
    CHECK(music.fault() == "");
    CHECK(music.file() == ferrywake);
    CHECK(music.title().startsWith("Ferrywake"));
    CHECK_FALSE(music.parts().isEmpty());
    CHECK(music.barsText().startsWith("bars 0 to "));
    CHECK(music.summary() != "");
    music.close();
    CHECK(music.file() == "");
    CHECK(music.summary() == "");
    CHECK(music.parts().isEmpty());
    music.read(QUrl::fromLocalFile(ferrywake).toString());
    CHECK(music.summary() != "");
}

TEST_CASE("an invalid file, missing bars and missing parts are reported or ignored") {
    MusicImport music;
    music.read("/nowhere/march.musicxml");
    CHECK(music.fault().contains("march.musicxml"));
    CHECK(music.file() == "");
    music.take();
    music.read(ferrywake);
    music.setPart(99);
    CHECK(music.part() == 0);
    music.setFrom("9999");
    CHECK(music.fault() != "");
    CHECK(music.summary() == "");
    music.setFrom("1");
    music.setTo("1");
    CHECK(music.fault() == "");
    CHECK(music.excerpt()->music.bars == 1);
}

TEST_CASE("bars that are taken are in the form of a new passage, in a piece with that title") {
    BookFixture fixture;
    PassageEditor editor(*fixture.book);
    MusicImport& music = *editor.music();
    music.read(ferrywake);
    music.setTo("2");
    music.take();
    CHECK(editor.passage() == "");
    CHECK(editor.valid());
    CHECK(editor.draft()["bars"] == QString::number(music.excerpt()->music.bars));
    CHECK(editor.pieceChoice() == "new");
    CHECK(editor.piece()->name() == QString::fromStdString(music.score().title));
    CHECK(editor.piece()->bars().toStdString() == music.score().parts[0].bars.back().number);
    CHECK(editor.piece()->transposition() == "-9");
    const auto saved = Id::parse(editor.save().toStdString());
    REQUIRE(saved);
    const Passage passage = fixture.book->notebook().passage(*saved)->passage;
    CHECK(passage.music == music.excerpt()->music);
    CHECK(passage.tempi.start == score::tempiOf(*music.excerpt()).start);
    CHECK(passage.notes == music.excerpt()->notes);
    music.take(); // again: the piece exists now
    CHECK(editor.pieceChoice() == QString::fromStdString(passage.title.piece.text()));
    CHECK(fixture.book->notebook().pieces().size() == 1);
}

TEST_CASE(
    "a passage keeps its notes while its bars, its meter and its pick-up stay, and loses them with these") {
    BookFixture fixture;
    PassageEditor editor(*fixture.book);
    editor.music()->read(ferrywake);
    editor.music()->setTo("2");
    editor.music()->take();
    const auto saved = Id::parse(editor.save().toStdString());
    REQUIRE(saved);
    const auto notes = [&] { return fixture.book->notebook().passage(*saved)->passage.notes.size(); };
    const auto all = notes();
    CHECK(all > 0);
    editor.set("title", "Letter A");
    editor.set("subdivision", 3);
    editor.set("countIn", "2");
    editor.save();
    CHECK(notes() == all);
    SUBCASE("bars") { editor.set("bars", "1"); }
    SUBCASE("meter") { editor.set("meter", "2/4"); }
    SUBCASE("pick-up") { editor.set("pickup", "1/8"); }
    SUBCASE("first bar") { editor.set("firstBar", "7"); }
    editor.save();
    CHECK(notes() == 0);
}

TEST_CASE("changing the bars and changing them back before saving keeps the notes") {
    BookFixture fixture;
    PassageEditor editor(*fixture.book);
    editor.music()->read(ferrywake);
    editor.music()->take();
    const auto bars = editor.draft()["bars"];
    editor.set("bars", "1");
    editor.set("bars", bars);
    const auto saved = Id::parse(editor.save().toStdString());
    REQUIRE(saved);
    CHECK(!fixture.book->notebook().passage(*saved)->passage.notes.empty());
}
