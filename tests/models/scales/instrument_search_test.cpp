// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/scales/instrument_search.h"

#include "../../practice/book_fixture.h"
#include "models/settings/language.h"
#include "text/scale_words.h"

#include <set>

using namespace piolo;
using namespace piolo::models;
using test::BookFixture;

namespace {

std::vector<std::string> found(const char* typed) {
    std::vector<std::string> names;
    for (const QVariant& family : instrumentsByFamily(QString::fromUtf8(typed)))
        for (const QVariant& one : family.toMap().value("instruments").toList())
            names.push_back(one.toMap().value("value").toString().toStdString());
    return names;
}

std::string_view meant(const char* part, int transposition = 0) {
    const Instrument* const instrument = instrumentMeant(QString::fromUtf8(part), transposition);
    return instrument == nullptr ? "" : instrument->name;
}

struct Speaking {
    explicit Speaking(const char* language) { speak(QString::fromLatin1(language)); }
    ~Speaking() { speak(QStringLiteral("en")); }
};

} // namespace

TEST_CASE("every instrument is in one family, and every family has a name in each language") {
    for (const char* language : {"en", "de", "it"}) {
        const Speaking speaking(language);
        const auto all = found("");
        CHECK(std::set(all.begin(), all.end()).size() == instruments().size());
        CHECK(all.size() == instruments().size());
        CHECK(instrumentsByFamily("").size() == static_cast<qsizetype>(instrumentFamilyCount));
        for (const QVariant& family : instrumentsByFamily(""))
            CHECK_FALSE(family.toMap().value("text").toString().isEmpty());
    }
}

TEST_CASE("what is typed is found in any part of a name, in the language of the window") {
    CHECK(found("alto") == std::vector<std::string>{"alto saxophone"});
    CHECK(found("SAX") == std::vector<std::string>{"soprano saxophone", "alto saxophone", "tenor saxophone",
                                                   "baritone saxophone"});
    CHECK(found("flat clar") == std::vector<std::string>{"clarinet in E flat", "clarinet in B flat"});
    CHECK(found("reed").size() == 3); // of the family
    CHECK(found("xylophone").empty());
    CHECK(firstInstrument("alto") == "alto saxophone");
    CHECK(firstInstrument("horn") == "English horn");
    CHECK(firstInstrument("phon") == "soprano saxophone");
    CHECK(firstInstrument("xylophone") == "");
    const Speaking german("de");
    CHECK(found("flugel") == std::vector<std::string>{"flugelhorn"});
    CHECK(found("posaune") == std::vector<std::string>{"trombone"});
    CHECK(firstInstrument("klar") == "clarinet in E flat");
}

TEST_CASE("a part's name means an instrument, and its transposition decides where the name does not") {
    CHECK(meant("Clarinet in B♭") == "clarinet in B flat");
    CHECK(meant("Bb Clarinet 2") == "clarinet in B flat");
    CHECK(meant("Clarinet 1", -2) == "clarinet in B flat");
    CHECK(meant("Clarinet 1") == ""); // any of three
    CHECK(meant("Bass Clarinet") == "bass clarinet");
    CHECK(meant("Alto Sax 1") == "alto saxophone");
    CHECK(meant("Flute") == "flute");
    CHECK(meant("Horn") == "horn in F");
    CHECK(meant("English Horn") == "English horn");
    CHECK(meant("Euphonium") == "euphonium");
    CHECK(meant("Euphonium", -14) == "euphonium in treble clef");
    CHECK(meant("Violin") == "");
    CHECK(meant("") == "");
    const Speaking german("de");
    CHECK(meant("Klarinette in B") == "clarinet in B flat");
    CHECK(meant("Trompete", -2) == "trumpet in B flat");
    CHECK(meant("Alto Saxophone") == "alto saxophone"); // scores are often in English
}

TEST_CASE("the instrument comes from the piece that was played last") {
    BookFixture player;
    CHECK_FALSE(instrumentOfPieces(player.book->notebook()));
    const Id march = player.book->newId();
    const Id suite = player.book->newId();
    player.book->record(PieceFact{march, "March", "Flute", {}});
    player.book->record(PieceFact{suite, "Suite", "Clarinet in B♭", {}});
    CHECK(instrumentOfPieces(player.book->notebook())->instrument->name == "flute");
    const Id passage = player.addPassage("coda", suite);
    player.run(passage, 60);
    const auto meant = instrumentOfPieces(player.book->notebook());
    REQUIRE(meant);
    CHECK(meant->instrument->name == "clarinet in B flat");
    CHECK(meant->piece == "Suite");
}
