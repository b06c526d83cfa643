// SPDX-License-Identifier: GPL-3.0-or-later
// The one place that turns numbers into words: tempi, note values, durations, dates, counts, the rule.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>

#include "core/history/fact.h"

namespace piolo::text {

/// Window thread. All texts are translated and use the default locale of the program. Functions that take
/// core's values are for models; those that take plain numbers are for QML, such as `Formatter.tempo(84500)`.
class Formatter : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    /// "84", "72.5": the shortest decimal, with the locale's decimal point.
    static QString tempo(Tempo tempo);
    /// The same from thousandths of a BPM, clamped to the range.
    Q_INVOKABLE static QString tempo(int thousandths);
    /// "♩", "♩.", "♪", and words for the values for which an ordinary font has no sign: "half", "dotted
    /// half".
    static QString beatSign(BeatUnit beat);
    /// "quarter", "dotted quarter": for choices and screen readers.
    static QString beatName(BeatUnit beat);
    /// "♩ = 84".
    static QString tempoMark(BeatUnit beat, Tempo tempo);
    /// "♩ = 84 · sixteenths".
    static QString tempoLine(const Music& music, Tempo tempo);
    /// "sixteenths", or "7 to the beat" if it has no name.
    static QString subdivision(BeatUnit beat, int pulses);
    /// "bars 41–44", "bar 9", "from bar 17" when open-ended.
    static QString bars(const Music& music);

    /// "a miss drops 4, five clean in a row climb 2".
    static QString rule(const Rule& rule);
    /// "4", or "2 notches": the size of a step.
    static QString step(StepKind kind, int size);

    /// "0.4 s", "11 s", "1 min 20 s", "33 min", "1 h 5 min".
    Q_INVOKABLE static QString duration(qint64 millis);
    /// "4 s", "4.5 s": for a setting, not a measurement.
    Q_INVOKABLE static QString seconds(int millis);
    /// "120 ms".
    Q_INVOKABLE static QString millis(int millis);
    /// "12 May", with the year if it differs from that of `today`.
    static QString date(Date date, Date today);
    /// "Tuesday, 12 May", with the year if it differs from that of `today`.
    static QString weekday(Date date, Date today);
    /// "18:02": the local time where it was recorded.
    static QString timeOfDay(Timestamp at);
    /// "bar 43, beat 3"; "bar 43" if the beat is unknown.
    static QString spot(const Spot& spot);
    /// "today", "tomorrow", "in 23 days", "3 days ago".
    static QString daysFrom(Date date, Date today);

    /// "five" up to twelve, then digits.
    Q_INVOKABLE static QString countWord(int count);
    /// "1 run", "7 runs".
    Q_INVOKABLE static QString runs(int count);
    /// "1 day", "3 days".
    Q_INVOKABLE static QString days(int count);
    /// "1 passage", "7 passages".
    Q_INVOKABLE static QString passages(int count);
    /// "3 of 5 clean in a row".
    Q_INVOKABLE static QString streak(int streak, int cleanRuns);
    /// Both, one after the other; either may be empty.
    Q_INVOKABLE static QString inOneLine(const QString& first, const QString& second);
    /// "35%": a gain or a share, 0…1, in hundredths.
    Q_INVOKABLE static QString ofHundred(double share);
};

} // namespace piolo::text
