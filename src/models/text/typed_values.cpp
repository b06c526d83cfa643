// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/typed_values.h"

#include "models/text/formatter.h"

#include <QDate>
#include <QLocale>
#include <QStringList>

namespace piolo::models {

namespace {

std::optional<Date> readIn(const QLocale& locale, QString text) {
    text.replace(QStringLiteral(". "), QStringLiteral(" ")); // the point of an ordinal
    const QStringList forms{QStringLiteral("d MMMM yyyy"), QStringLiteral("d MMM yyyy"),
                            QStringLiteral("d.M.yyyy"), QStringLiteral("d/M/yyyy"),
                            locale.dateFormat(QLocale::ShortFormat)};
    for (const QString& form : forms) {
        QDate date = locale.toDate(text, form);
        // A two-digit year is in this century.
        if (date.isValid() && date.year() < 2000) date = date.addYears(100);
        if (date.isValid()) return Date::parse(date.toString(Qt::ISODate).toStdString());
    }
    return std::nullopt;
}

} // namespace

std::optional<int> readCount(const QString& text, int least, int most) {
    bool whole = false;
    // A real minus sign is as good as the keyboard's hyphen.
    const int value = text.trimmed().replace(QChar(0x2212), QLatin1Char('-')).toInt(&whole);
    if (!whole || value < least || value > most) return std::nullopt;
    return value;
}

std::optional<Tempo> readTempo(const QString& text) {
    QString plain = text.trimmed();
    plain.replace(QLocale().decimalPoint(), QStringLiteral("."));
    plain.replace(QLatin1Char(','), QLatin1Char('.'));
    const auto read = Tempo::parse(plain.toStdString());
    return read ? std::optional(*read) : std::nullopt;
}

std::optional<Date> readDate(const QString& text) {
    const QString plain = text.simplified();
    if (const auto date = Date::parse(plain.toStdString())) return date;
    const auto date = readIn(QLocale(), plain);
    return date ? date : readIn(QLocale::c(), plain);
}

QString dateForTyping(Date date) { return Formatter::date(date, {}); }

} // namespace piolo::models
