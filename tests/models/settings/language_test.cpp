// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/language.h"

#include "models/settings/language_table.h"

#include "../../practice/book_fixture.h"
#include "../../practice/virtual_sound.h"
#include "models/keys/key_table.h"
#include "models/passages/draft_check.h"
#include "models/passages/passage_draft.h"
#include "models/settings/setting_choices.h"
#include "models/settings/settings_model.h"
#include "models/text/formatter.h"
#include "models/text/typed_values.h"
#include "practice/faults/fault_text.h"

#include <QDirIterator>
#include <QFile>
#include <QSignalSpy>

using namespace piolo;
using models::Formatter;
using models::speak;

namespace {

constexpr Date tuesday{2026, 5, 12};

/// The other tests are in English, with plain numbers.
struct Spoken {
    explicit Spoken(const char* code) { speak(QString::fromLatin1(code)); }
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;
    ~Spoken() {
        speak(QStringLiteral("en"));
        QLocale::setDefault(QLocale::c());
    }
};

} // namespace

// The names of days and months come with Qt, from the Unicode CLDR.
TEST_CASE("a language has its own words, numbers and dates") {
    {
        const Spoken german("de");
        CHECK(Formatter::tempo(72'500) == "72,5");
        CHECK(Formatter::weekday(tuesday, tuesday) == "Dienstag, 12. Mai");
        CHECK(Formatter::date(tuesday, Date{2027, 1, 1}) == "12. Mai 2026");
        CHECK(Formatter::subdivision(BeatUnit::quarter, 7) == "Septolen");
        CHECK(practice::faultSentence({FaultNumber::diskFull, {}, {}}).startsWith("die Platte ist voll"));
    }
    {
        const Spoken italian("it");
        CHECK(Formatter::tempo(72'500) == "72,5");
        CHECK(Formatter::weekday(tuesday, tuesday) == "martedì, 12 maggio");
        CHECK(Formatter::subdivision(BeatUnit::quarter, 6) == "sestine");
    }
    CHECK(Formatter::subdivision(BeatUnit::quarter, 7) == "septuplets");
}

TEST_CASE("one is one and two are two in every language") {
    const auto said = [](const char* code, int days) {
        const Spoken spoken(code);
        return qtTrId("passages.secure", days).toStdString();
    };
    CHECK(said("en", 1) == "secure on 1 day");
    CHECK(said("en", 2) == "secure on 2 days");
    CHECK(said("de", 1) == "sicher an 1 Tag");
    CHECK(said("de", 2) == "sicher an 2 Tagen");
    CHECK(said("it", 1) == "sicuro in 1 giorno");
    CHECK(said("it", 2) == "sicuro in 2 giorni");
}

TEST_CASE("a tempo is read with a point and with a comma in every language") {
    for (const models::Language& language : models::languageTable) {
        CAPTURE(std::string(language.code));
        const Spoken spoken(language.code);
        CHECK(models::readTempo("72,5") == Tempo::clampedThousandths(72'500));
        CHECK(models::readTempo("72.5") == Tempo::clampedThousandths(72'500));
        CHECK(models::readTempo(Formatter::tempo(72'500)) == Tempo::clampedThousandths(72'500));
        CHECK_FALSE(models::readTempo("1.072,5"));
    }
}

TEST_CASE("a date is read as it is shown for typing, as the language has it, and as files have it") {
    for (const models::Language& language : models::languageTable) {
        CAPTURE(std::string(language.code));
        const Spoken spoken(language.code);
        for (std::int8_t month = 1; month <= 12; ++month) {
            const Date date{2027, month, 3};
            CHECK(models::readDate(models::dateForTyping(date)) == date);
        }
        CHECK(models::readDate("2026-05-12") == tuesday);
        CHECK(models::readDate("12 May 2026") == tuesday);
    }
    const Spoken german("de");
    CHECK(models::dateForTyping(tuesday) == "12. Mai 2026");
    CHECK(models::readDate("12. Mai 2026") == tuesday);
    CHECK(models::readDate("12 Mai 2026") == tuesday);
    CHECK(models::readDate("12.5.2026") == tuesday);
    CHECK(models::readDate("12.05.26") == tuesday);
}

TEST_CASE("the language's word for no pick-up is read as none") {
    for (const models::Language& language : models::languageTable) {
        CAPTURE(std::string(language.code));
        const Spoken spoken(language.code);
        QVariantMap draft = models::draftOf(models::freshPassage());
        draft["pickup"] = qtTrId("form.none");
        const models::DraftCheck read = models::checkDraft(draft);
        CHECK(read.faults.isEmpty());
        CHECK(read.passage.music.pickup == Fraction{});
    }
}

TEST_CASE("the language is one of the table, or the system's") {
    QStringList offered;
    for (const QVariant& entry : models::languageChoices())
        offered << entry.toMap().value("value").toString();
    QStringList wanted{"system"};
    for (const models::Language& language : models::languageTable) wanted << language.code;
    CHECK(offered == wanted);
    CHECK(offered.size() >= 4);
    const Spoken unknown("xx");
    CHECK(QLocale() == QLocale::system());
}

TEST_CASE_FIXTURE(test::BookFixture,
                  "another language is reported once, saved, and used by what was made before") {
    const Spoken before("en");
    journal::MachineSettings machine;
    test::VirtualSound sound{std::make_shared<engine::DrillEngine>()};
    models::SettingsModel settings{*book, sound, machine, path("config")};
    const QSignalSpy reported(&settings, &models::SettingsModel::languageChanged);
    settings.setLanguage("de");
    settings.setLanguage("de");
    settings.setLanguage("xx");
    CHECK(reported.size() == 1);
    CHECK(settings.language() == "de");
    CHECK(settings.themes().constFirst().toMap().value("text") == "Systemeinstellung");
    CHECK(models::KeyTable::words(models::KeyAction::attempt) == "Ein Versuch im Zieltempo");
    settings.saveNow();
    Fault fault;
    auto random = journal::systemRandomness();
    CHECK(journal::loadMachineSettings(path("config"), *random, &fault).value().language == "de");
}

TEST_CASE_FIXTURE(test::BookFixture, "what is recorded is the same in every language") {
    const Spoken german("de");
    const Id passage = addPassage("Letter C");
    book->record(RunFact{
        passage, Tempo::clampedThousandths(72'500), Mark::clean, Reason::none, RunKind::run, 8'000, {}});
    CHECK(book->flush(2000));
    QDirIterator files(scratch.filePath("folder"), {"*.jsonl"}, QDir::Files, QDirIterator::Subdirectories);
    REQUIRE(files.hasNext());
    QFile journal(files.next());
    REQUIRE(journal.open(QIODevice::ReadOnly));
    const QByteArray written = journal.readAll();
    CHECK(written.contains("\"tempo\":72500,"));
    CHECK(written.contains("\"at\":\"2026-03-01T08:00:00.000"));
}
