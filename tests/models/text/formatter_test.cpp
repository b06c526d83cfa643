// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/formatter.h"

#include <doctest/doctest.h>

#include <QLocale>
#include <QSet>

using piolo::BeatUnit;
using piolo::Date;
using piolo::Rule;
using piolo::StepKind;
using piolo::Tempo;
using piolo::models::Formatter;

namespace {

/// Sets the default locale while this object exists.
class InLocale {
public:
    explicit InLocale(const char* name) { QLocale::setDefault(QLocale(QString::fromLatin1(name))); }
    ~InLocale() { QLocale::setDefault(before_); }
    InLocale(const InLocale&) = delete;
    InLocale& operator=(const InLocale&) = delete;

private:
    QLocale before_;
};

std::string said(const QString& text) { return text.toStdString(); }

} // namespace

TEST_CASE("a tempo is the shortest decimal, with the locale's decimal point") {
    CHECK(said(Formatter::tempo(Tempo::bpm(84))) == "84");
    CHECK(said(Formatter::tempo(72'500)) == "72.5");
    CHECK(said(Formatter::tempo(72'125)) == "72.125");
    const InLocale german("de_DE");
    CHECK(said(Formatter::tempo(72'500)) == "72,5");
}

TEST_CASE("a tempo out of range reads as the nearest in range") {
    CHECK(said(Formatter::tempo(0)) == "10");
    CHECK(said(Formatter::tempo(1'000'000)) == "400");
}

TEST_CASE("beat units have a sign where a plain font has one, and words where it has none") {
    // U+2669 and U+266A are QUARTER NOTE and EIGHTH NOTE in the Unicode Character Database 15.0.0.
    CHECK(Formatter::beatSign(BeatUnit::quarter) == QString(QChar(0x2669)));
    CHECK(Formatter::beatSign(BeatUnit::dottedQuarter) == QString(QChar(0x2669)) + ".");
    CHECK(Formatter::beatSign(BeatUnit::eighth) == QString(QChar(0x266A)));
    CHECK(said(Formatter::beatSign(BeatUnit::half)) == "half");
    CHECK(said(Formatter::tempoMark(BeatUnit::quarter, Tempo::bpm(84))) == "♩ = 84");
    CHECK(said(Formatter::tempoMark(BeatUnit::dottedHalf, Tempo::bpm(50))) == "dotted half = 50");
}

TEST_CASE("subdivisions have their musical name, or a count") {
    // Common practice.
    CHECK(said(Formatter::subdivision(BeatUnit::quarter, 4)) == "sixteenths");
    CHECK(said(Formatter::subdivision(BeatUnit::quarter, 7)) == "septuplets");
    CHECK(said(Formatter::subdivision(BeatUnit::half, 4)) == "eighths");
    CHECK(said(Formatter::subdivision(BeatUnit::dottedQuarter, 3)) == "eighths");
    CHECK(said(Formatter::subdivision(BeatUnit::dottedQuarter, 5)) == "5 to the beat");
}

TEST_CASE("no two subdivisions of one beat unit have the same name") {
    for (const BeatUnit beat : {BeatUnit::half, BeatUnit::quarter, BeatUnit::dottedQuarter, BeatUnit::eighth,
                                BeatUnit::dottedHalf}) {
        QSet<QString> names;
        for (int pulses = 1; pulses <= 8; ++pulses) names.insert(Formatter::subdivision(beat, pulses));
        CHECK(names.size() == 8);
        CHECK(!names.contains(QString()));
    }
}

TEST_CASE("the tempo line names mark and subdivision, the bars are the part's own") {
    piolo::Music music;
    music.subdivision = 4;
    music.firstBar = 41;
    CHECK(said(Formatter::tempoLine(music, Tempo::bpm(84))) == "♩ = 84 · sixteenths");
    CHECK(said(Formatter::bars(music)) == "bars 41–44");
    music.bars = 1;
    CHECK(said(Formatter::bars(music)) == "bar 41");
    music.bars = 0;
    CHECK(said(Formatter::bars(music)) == "from bar 41");
}

TEST_CASE("the rule is a sentence") {
    Rule rule;
    CHECK(said(Formatter::rule(rule)) == "a miss drops 4, five clean in a row climb 2");
    rule.cleanRuns = 1;
    CHECK(said(Formatter::rule(rule)) == "a miss drops 4, each clean run climbs 2");
    rule = {StepKind::notches, 2, 1, 13, Tempo::bpm(40), Tempo::bpm(96)};
    CHECK(Formatter::rule(rule).startsWith("a miss drops "));
    CHECK(Formatter::rule(rule).endsWith("13 clean in a row climb 1 notch"));
}

TEST_CASE("durations are as fine as a player needs") {
    CHECK(said(Formatter::duration(0)) == "0.0 s");
    CHECK(said(Formatter::duration(400)) == "0.4 s");
    CHECK(said(Formatter::duration(11'429)) == "11 s");
    CHECK(said(Formatter::duration(59'600)) == "1 min");
    CHECK(said(Formatter::duration(80'000)) == "1 min 20 s");
    CHECK(said(Formatter::duration(33 * 60'000 + 10'000)) == "33 min");
    CHECK(said(Formatter::duration(3'599'000)) == "1 h");
    CHECK(said(Formatter::duration(65 * 60'000)) == "1 h 5 min");
}

TEST_CASE("configured times are shown as they were set") {
    CHECK(said(Formatter::seconds(4'000)) == "4 s");
    CHECK(said(Formatter::seconds(4'500)) == "4.5 s");
    CHECK(said(Formatter::millis(-120)) == "-120 ms");
}

TEST_CASE("a date of this year needs no year, and days are counted in words") {
    const Date today{2026, 4, 19};
    CHECK(said(Formatter::date({2026, 5, 12}, today)) == "12 May");
    CHECK(said(Formatter::date({2027, 5, 12}, today)) == "12 May 2027");
    CHECK(said(Formatter::weekday({2026, 5, 12}, today)) == "Tuesday, 12 May");
    CHECK(said(Formatter::weekday({2024, 2, 29}, today)) == "Thursday, 29 February 2024");
    CHECK(said(Formatter::daysFrom(today, today)) == "today");
    CHECK(said(Formatter::daysFrom({2026, 4, 20}, today)) == "tomorrow");
    CHECK(said(Formatter::daysFrom({2026, 4, 18}, today)) == "yesterday");
    CHECK(said(Formatter::daysFrom({2026, 5, 12}, today)) == "in 23 days");
    CHECK(said(Formatter::daysFrom({2026, 4, 16}, today)) == "3 days ago");
}

TEST_CASE("a time is the local one where it was recorded") {
    CHECK(said(Formatter::timeOfDay({1'772'352'000'000, 0})) == "08:00"); // 2026-03-01T08:00:00Z
    CHECK(said(Formatter::timeOfDay({1'772'352'000'000, 630})) == "18:30");
    CHECK(said(Formatter::timeOfDay({1'772'352'000'000, -600})) == "22:00");
    CHECK(said(Formatter::timeOfDay({-60'000, 0})) == "23:59");
}

TEST_CASE("a place in the part has its bar and, when known, its beat") {
    CHECK(said(Formatter::spot({43, 3})) == "bar 43, beat 3");
    CHECK(said(Formatter::spot({0, 0})) == "bar 0");
}

TEST_CASE("singular and plural differ") {
    CHECK(said(Formatter::runs(1)) == "1 run");
    CHECK(said(Formatter::runs(7)) == "7 runs");
    CHECK(said(Formatter::days(1)) == "1 day");
    CHECK(said(Formatter::passages(0)) == "0 passages");
    CHECK(said(Formatter::countWord(5)) == "five");
    CHECK(said(Formatter::countWord(12)) == "twelve");
    CHECK(said(Formatter::countWord(13)) == "13");
    CHECK(said(Formatter::streak(3, 5)) == "3 of 5 clean in a row");
    CHECK(said(Formatter::ofHundred(0.9221)) == "92%");
}
