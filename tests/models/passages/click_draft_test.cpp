// SPDX-License-Identifier: GPL-3.0-or-later
// The click of a passage, as it is edited.
#include "models/passages/passage_editor.h"
#include "models/text/click_words.h"

#include "../../practice/book_fixture.h"

using namespace piolo;
using models::PassageEditor;
using test::BookFixture;

namespace {

struct ClickFixture : BookFixture {
    PassageEditor editor{*book};

    [[nodiscard]] ClickPattern saved() {
        const QString id = editor.save();
        const PassageRecord* record = book->notebook().passage(Id::parse(id.toStdString()).value());
        REQUIRE(record != nullptr);
        return record->passage.click;
    }
    [[nodiscard]] std::string sentence() { return editor.text()->clickSentence().toStdString(); }
    [[nodiscard]] int accent(int beat) {
        return editor.choices()->accents().at(beat).toMap().value("value").toInt();
    }
};

} // namespace

TEST_CASE_FIXTURE(ClickFixture, "a new passage has the usual click, and says so") {
    CHECK(sentence() == "Click: every beat, following the meter");
    CHECK(saved() == ClickPattern{});
}

TEST_CASE_FIXTURE(ClickFixture, "every part of the click is typed, saved and there again") {
    const std::pair<const char*, QVariant> typed[] = {
        {"clickOn", 2},         {"swing", "2 : 1"},      {"swung", 1},
        {"barsOn", "2"},        {"barsOff", "3"},        {"silentBars", "25"},
        {"leftOutBeats", "10"}, {"seed", "77"},          {"breaths", "2, 3:4, 4:1+2"},
        {"accents", "021"},     {"breathBelow", "72.5"},
    };
    for (const auto& [field, value] : typed) editor.set(QString::fromLatin1(field), value);
    REQUIRE(editor.valid());
    const ClickPattern click = saved();
    CHECK(click.on == ClickOn::backbeats);
    CHECK(click.swing == Fraction{2, 1});
    CHECK(click.swung == SwungNotes::sixteenths);
    CHECK(click.barsOn == 2);
    CHECK(click.barsOff == 3);
    CHECK(click.silentBars == 25);
    CHECK(click.leftOutBeats == 10);
    CHECK(click.seed == 77);
    CHECK(click.breaths == std::vector<BreathPlace>{{2, 1, 1}, {3, 4, 1}, {4, 1, 2}});
    CHECK(click.accents == std::vector<Accent>{Accent::strong, Accent::plain, Accent::group});
    CHECK(click.breathBelow == *Tempo::parse("72.5"));
    CHECK(editor.draft().value("breaths") == "2, 3:4, 4+2");
    CHECK(editor.draft().value("swing") == "2:1");
    CHECK(!editor.changed());
}

TEST_CASE_FIXTURE(ClickFixture, "a change of the click records the click and nothing else") {
    const QString id = editor.save();
    const auto groups = book->notebook().factCount();
    editor.set("barsOff", "1");
    CHECK(editor.save() == id);
    CHECK(book->notebook().factCount() == groups + 1);
    editor.set("barsOff", "0");
    CHECK(saved() == ClickPattern{});
}

TEST_CASE_FIXTURE(ClickFixture, "each part is checked as it is typed, with one plain line") {
    const std::pair<const char*, const char*> bad[] = {
        {"swing", "4:1"},      {"swing", "1:2"},      {"swing", "two"},      {"barsOn", "0"},
        {"barsOff", "100"},    {"silentBars", "101"}, {"leftOutBeats", "x"}, {"seed", "-1"},
        {"breaths", "4, 3"},   {"breaths", "4, 4"},   {"breaths", "4:33"},   {"breaths", "4+9"},
        {"breaths", "4:1:1"},  {"breaths", "four"},   {"breaths", "4 5 6:"}, {"breathBelow", "9"},
        {"breathBelow", "up"},
    };
    for (const auto& [field, value] : bad) {
        CAPTURE(std::string(field));
        CAPTURE(std::string(value));
        const QVariant good = editor.draft().value(field);
        editor.set(field, value);
        CHECK(editor.faults().size() == 1);
        CHECK(!editor.faults().value(field).toString().isEmpty());
        CHECK(!editor.valid());
        editor.set(field, good);
        CHECK(editor.valid());
    }
}

TEST_CASE_FIXTURE(ClickFixture, "seventeen breath places are one too many") {
    QStringList places;
    for (int bar = 1; bar <= 16; ++bar) places << QString::number(bar);
    editor.set("breaths", places.join(','));
    CHECK(editor.valid());
    editor.set("breaths", (places << "17").join(','));
    CHECK(!editor.valid());
}

TEST_CASE_FIXTURE(ClickFixture, "a beat's accent goes round strong, half strong, plain, silent") {
    editor.set("meter", "7/8");
    editor.set("beat", "1/8");
    REQUIRE(editor.choices()->accents().size() == 7);
    // 2+2+3, the usual groups: half strong on beats 3 and 5.
    CHECK(accent(0) == static_cast<int>(Accent::strong));
    CHECK(accent(2) == static_cast<int>(Accent::group));
    CHECK(accent(3) == static_cast<int>(Accent::plain));
    editor.turnAccent(3);
    CHECK(accent(3) == static_cast<int>(Accent::silent));
    CHECK(accent(2) == static_cast<int>(Accent::group));
    CHECK(accent(4) == static_cast<int>(Accent::group));
    editor.turnAccent(3);
    CHECK(accent(3) == static_cast<int>(Accent::strong));
    CHECK(editor.choices()->accents().at(3).toMap().value("text") == "Beat 4: strong");
    editor.turnAccent(7);
    editor.turnAccent(-1);
    CHECK(editor.choices()->accents().size() == 7);
    CHECK(saved().accents.size() == 4);
    editor.set("accents", "");
    CHECK(saved() == ClickPattern{});
}

TEST_CASE_FIXTURE(ClickFixture, "the sentence names what is not as usual") {
    editor.set("clickOn", 1);
    CHECK(sentence() == "Click: downbeats only");
    editor.set("clickOn", 0);
    editor.set("swing", "3:2");
    editor.set("barsOff", "2");
    CHECK(sentence() == "Click: swing 3:2 in eighths · alternating: 1 bars with the click, 2 without");
    editor.set("swing", "");
    editor.set("barsOff", "0");
    editor.set("breaths", "2, 3");
    editor.set("breathBelow", "80");
    CHECK(sentence() == "Click: waits for breath at 2 places below 80");
}
