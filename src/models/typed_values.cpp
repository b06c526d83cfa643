// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/typed_values.h"

#include <QDate>
#include <QLocale>
#include <QStringList>

namespace piolo::models {

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
    const QLocale locale;
    const QStringList forms{QStringLiteral("d MMMM yyyy"), QStringLiteral("d MMM yyyy"),
                            QStringLiteral("d.M.yyyy"), QStringLiteral("d/M/yyyy"),
                            locale.dateFormat(QLocale::ShortFormat)};
    for (const QString& form : forms) {
        QDate date = locale.toDate(plain, form);
        // A year of two figures is one of this century.
        if (date.isValid() && date.year() < 2000) date = date.addYears(100);
        if (date.isValid()) return Date::parse(date.toString(Qt::ISODate).toStdString());
    }
    return std::nullopt;
}

QString dateForTyping(Date date) {
    return QLocale().toString(QDate(date.year, date.month, date.day), QStringLiteral("d MMMM yyyy"));
}

} // namespace piolo::models
