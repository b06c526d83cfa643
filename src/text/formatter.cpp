// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/formatter.h"

#include "core/time/subdivision.h"
#include "text/number_words.h"

#include <QDate>
#include <QLocale>
#include <QTime>

#include <algorithm>
#include <cmath>

namespace piolo::text {

namespace {

QDate qDate(Date date) { return {date.year, date.month, date.day}; }

QString figure(qint64 value) { return QLocale().toString(value); }

} // namespace

QString Formatter::tempo(Tempo tempo) {
    QString text = QString::fromStdString(tempo.text());
    return text.replace(QLatin1Char('.'), QLocale().decimalPoint());
}

QString Formatter::tempo(int thousandths) { return tempo(Tempo::clampedThousandths(thousandths)); }

QString Formatter::beatSign(BeatUnit beat) {
    switch (beat) {
    case BeatUnit::half:
        return qtTrId("beat.half");
    case BeatUnit::quarter:
        return QStringLiteral("♩");
    case BeatUnit::dottedQuarter:
        return QStringLiteral("♩.");
    case BeatUnit::eighth:
        return QStringLiteral("♪");
    case BeatUnit::dottedHalf:
        return qtTrId("beat.dotted-half");
    }
    return {};
}

QString Formatter::beatName(BeatUnit beat) {
    switch (beat) {
    case BeatUnit::half:
        return qtTrId("beat.half");
    case BeatUnit::quarter:
        return qtTrId("beat.quarter");
    case BeatUnit::dottedQuarter:
        return qtTrId("beat.dotted-quarter");
    case BeatUnit::eighth:
        return qtTrId("beat.eighth");
    case BeatUnit::dottedHalf:
        return qtTrId("beat.dotted-half");
    }
    return {};
}

QString Formatter::tempoMark(BeatUnit beat, Tempo value) {
    return qtTrId("beat.tempo").arg(beatSign(beat), tempo(value));
}

QString Formatter::tempoLine(const Music& music, Tempo value) {
    const BeatUnit beat = music.meter.beat();
    return qtTrId("words.tempo-line").arg(tempoMark(beat, value), subdivision(beat, music.subdivision));
}

QString Formatter::subdivision(BeatUnit beat, int pulses) {
    const SubdivisionName name = nameOf(beat, pulses);
    return name == SubdivisionName::other ? qtTrId("subdivision.to-the-beat").arg(figure(pulses))
                                          : subdivisionWord(name);
}

QString Formatter::bars(const Music& music) {
    if (music.bars == 0) return qtTrId("words.from-bar").arg(figure(music.firstBar));
    if (music.bars == 1) return qtTrId("words.bar").arg(figure(music.firstBar));
    return qtTrId("words.bars").arg(figure(music.firstBar), figure(music.firstBar + music.bars - 1));
}

QString Formatter::rule(const Rule& rule) {
    const QString drop = step(rule.step, rule.drop);
    const QString climb = step(rule.step, rule.climb);
    if (rule.cleanRuns == 1) return qtTrId("rule.each").arg(drop, climb);
    const QString line = qtTrId("rule.streak").arg(drop, countWord(rule.cleanRuns), climb);
    return rule.gentle ? qtTrId("rule.gentle").arg(line) : line;
}

QString Formatter::step(StepKind kind, int size) {
    if (kind == StepKind::bpm) return figure(size);
    return qtTrId("rule.notches", size);
}

QString Formatter::duration(qint64 millis) {
    if (millis < 950)
        return qtTrId("words.seconds").arg(QLocale().toString(static_cast<double>(millis) / 1000.0, 'f', 1));
    const qint64 seconds = (millis + 500) / 1000;
    if (seconds < 60) return qtTrId("words.seconds").arg(figure(seconds));
    if (seconds < 600 && seconds % 60 != 0)
        return qtTrId("words.minutes-seconds").arg(figure(seconds / 60), figure(seconds % 60));
    const qint64 minutes = (seconds + 30) / 60;
    if (minutes < 60) return qtTrId("words.minutes").arg(figure(minutes));
    if (minutes % 60 == 0) return qtTrId("words.hours").arg(figure(minutes / 60));
    return qtTrId("words.hours-minutes").arg(figure(minutes / 60), figure(minutes % 60));
}

QString Formatter::seconds(int millis) {
    const int decimals = millis % 1000 == 0 ? 0 : 1;
    return qtTrId("words.seconds")
        .arg(QLocale().toString(static_cast<double>(millis) / 1000.0, 'f', decimals));
}

QString Formatter::millis(int millis) { return qtTrId("words.millis").arg(figure(millis)); }

QString Formatter::date(Date date, Date today) {
    const QString format = date.year == today.year ? qtTrId("words.date") : qtTrId("words.date-with-year");
    return QLocale().toString(qDate(date), format);
}

QString Formatter::weekday(Date date, Date today) {
    return qtTrId("words.weekday-date")
        .arg(QLocale().toString(qDate(date), QStringLiteral("dddd")), Formatter::date(date, today));
}

QString Formatter::timeOfDay(Timestamp at) {
    constexpr qint64 day = 86'400'000;
    const qint64 local = (at.utcMillis + at.offsetMinutes * qint64{60'000}) % day;
    return QTime::fromMSecsSinceStartOfDay(static_cast<int>((local + day) % day))
        .toString(qtTrId("words.time"));
}

QString Formatter::spot(const Spot& spot) {
    const QString bar = qtTrId("words.bar").arg(figure(spot.bar));
    return spot.beat > 0 ? qtTrId("words.bar-beat").arg(bar, figure(spot.beat)) : bar;
}

QString Formatter::daysFrom(Date date, Date today) {
    const auto apart = static_cast<int>(date.daysSince1970() - today.daysSince1970());
    if (apart == 0) return qtTrId("words.today");
    if (apart == 1) return qtTrId("words.tomorrow");
    if (apart == -1) return qtTrId("words.yesterday");
    return apart > 0 ? qtTrId("words.in-days", apart) : qtTrId("words.days-ago", -apart);
}

QString Formatter::countWord(int count) { return numberWord(count); }

QString Formatter::runs(int count) { return qtTrId("words.runs", count); }

QString Formatter::days(int count) { return qtTrId("words.days", count); }

QString Formatter::passages(int count) { return qtTrId("words.passages", count); }

QString Formatter::streak(int streak, int cleanRuns) {
    return qtTrId("words.in-a-row").arg(figure(streak), figure(cleanRuns));
}

QString Formatter::inOneLine(const QString& first, const QString& second) {
    return first.isEmpty() || second.isEmpty() ? first + second
                                               : qtTrId("words.in-one-line").arg(first, second);
}

QString Formatter::ofHundred(double share) {
    return qtTrId("words.of-hundred").arg(figure(std::lround(std::clamp(share, 0.0, 1.0) * 100.0)));
}

} // namespace piolo::text
