// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/formatter.h"

#include "core/time/subdivision.h"
#include "models/text/number_words.h"

#include <QDate>
#include <QLocale>
#include <QTime>

#include <algorithm>
#include <cmath>

namespace piolo::models {

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
        return tr("half");
    case BeatUnit::quarter:
        return QStringLiteral("♩");
    case BeatUnit::dottedQuarter:
        return QStringLiteral("♩.");
    case BeatUnit::eighth:
        return QStringLiteral("♪");
    case BeatUnit::dottedHalf:
        return tr("dotted half");
    }
    return {};
}

QString Formatter::beatName(BeatUnit beat) {
    switch (beat) {
    case BeatUnit::half:
        return tr("half");
    case BeatUnit::quarter:
        return tr("quarter");
    case BeatUnit::dottedQuarter:
        return tr("dotted quarter");
    case BeatUnit::eighth:
        return tr("eighth");
    case BeatUnit::dottedHalf:
        return tr("dotted half");
    }
    return {};
}

QString Formatter::tempoMark(BeatUnit beat, Tempo value) {
    return tr("%1 = %2", "a beat unit's sign = its beats per minute").arg(beatSign(beat), tempo(value));
}

QString Formatter::tempoLine(const Music& music, Tempo value) {
    const BeatUnit beat = music.meter.beat();
    return tr("%1 · %2", "tempo mark · subdivision")
        .arg(tempoMark(beat, value), subdivision(beat, music.subdivision));
}

QString Formatter::subdivision(BeatUnit beat, int pulses) {
    const SubdivisionName name = nameOf(beat, pulses);
    return name == SubdivisionName::other ? tr("%1 to the beat").arg(figure(pulses)) : subdivisionWord(name);
}

QString Formatter::bars(const Music& music) {
    if (music.bars == 0) return tr("from bar %1").arg(figure(music.firstBar));
    if (music.bars == 1) return tr("bar %1").arg(figure(music.firstBar));
    return tr("bars %1–%2").arg(figure(music.firstBar), figure(music.firstBar + music.bars - 1));
}

QString Formatter::rule(const Rule& rule) {
    const QString drop = step(rule.step, rule.drop);
    const QString climb = step(rule.step, rule.climb);
    if (rule.cleanRuns == 1) return tr("a miss drops %1, each clean run climbs %2").arg(drop, climb);
    const QString line =
        tr("a miss drops %1, %2 clean in a row climb %3").arg(drop, countWord(rule.cleanRuns), climb);
    return rule.gentle ? tr("%1, gentle near the target", "the rule").arg(line) : line;
}

QString Formatter::step(StepKind kind, int size) {
    if (kind == StepKind::bpm) return figure(size);
    return size == 1 ? tr("1 notch") : tr("%n notches", nullptr, size);
}

QString Formatter::duration(qint64 millis) {
    if (millis < 950) return tr("%1 s").arg(QLocale().toString(static_cast<double>(millis) / 1000.0, 'f', 1));
    const qint64 seconds = (millis + 500) / 1000;
    if (seconds < 60) return tr("%1 s").arg(figure(seconds));
    if (seconds < 600 && seconds % 60 != 0)
        return tr("%1 min %2 s").arg(figure(seconds / 60), figure(seconds % 60));
    const qint64 minutes = (seconds + 30) / 60;
    if (minutes < 60) return tr("%1 min").arg(figure(minutes));
    if (minutes % 60 == 0) return tr("%1 h").arg(figure(minutes / 60));
    return tr("%1 h %2 min").arg(figure(minutes / 60), figure(minutes % 60));
}

QString Formatter::seconds(int millis) {
    const int decimals = millis % 1000 == 0 ? 0 : 1;
    return tr("%1 s").arg(QLocale().toString(static_cast<double>(millis) / 1000.0, 'f', decimals));
}

QString Formatter::millis(int millis) { return tr("%1 ms").arg(figure(millis)); }

QString Formatter::date(Date date, Date today) {
    const QString format = date.year == today.year ? tr("d MMMM", "a date of this year")
                                                   : tr("d MMMM yyyy", "a date of another year");
    return QLocale().toString(qDate(date), format);
}

QString Formatter::weekday(Date date, Date today) {
    return tr("%1, %2", "day of the week, date")
        .arg(QLocale().toString(qDate(date), QStringLiteral("dddd")), Formatter::date(date, today));
}

QString Formatter::timeOfDay(Timestamp at) {
    constexpr qint64 day = 86'400'000;
    const qint64 local = (at.utcMillis + at.offsetMinutes * qint64{60'000}) % day;
    return QTime::fromMSecsSinceStartOfDay(static_cast<int>((local + day) % day))
        .toString(tr("HH:mm", "a time"));
}

QString Formatter::spot(const Spot& spot) {
    const QString bar = tr("bar %1").arg(figure(spot.bar));
    return spot.beat > 0 ? tr("%1, beat %2", "bar 43, beat 3").arg(bar, figure(spot.beat)) : bar;
}

QString Formatter::daysFrom(Date date, Date today) {
    const auto apart = static_cast<int>(date.daysSince1970() - today.daysSince1970());
    if (apart == 0) return tr("today");
    if (apart == 1) return tr("tomorrow");
    if (apart == -1) return tr("yesterday");
    return apart > 0 ? tr("in %n days", nullptr, apart) : tr("%n days ago", nullptr, -apart);
}

QString Formatter::countWord(int count) { return numberWord(count); }

QString Formatter::runs(int count) { return count == 1 ? tr("1 run") : tr("%n runs", nullptr, count); }

QString Formatter::days(int count) { return count == 1 ? tr("1 day") : tr("%n days", nullptr, count); }

QString Formatter::passages(int count) {
    return count == 1 ? tr("1 passage") : tr("%n passages", nullptr, count);
}

QString Formatter::streak(int streak, int cleanRuns) {
    return tr("%1 of %2 clean in a row").arg(figure(streak), figure(cleanRuns));
}

QString Formatter::ofHundred(double share) {
    return tr("%1 of 100").arg(figure(std::lround(std::clamp(share, 0.0, 1.0) * 100.0)));
}

} // namespace piolo::models
