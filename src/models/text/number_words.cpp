// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/number_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <array>

namespace piolo::models {

namespace {

constexpr std::array numbers{
    QT_TRANSLATE_NOOP("NumberWords", "one"),    QT_TRANSLATE_NOOP("NumberWords", "two"),
    QT_TRANSLATE_NOOP("NumberWords", "three"),  QT_TRANSLATE_NOOP("NumberWords", "four"),
    QT_TRANSLATE_NOOP("NumberWords", "five"),   QT_TRANSLATE_NOOP("NumberWords", "six"),
    QT_TRANSLATE_NOOP("NumberWords", "seven"),  QT_TRANSLATE_NOOP("NumberWords", "eight"),
    QT_TRANSLATE_NOOP("NumberWords", "nine"),   QT_TRANSLATE_NOOP("NumberWords", "ten"),
    QT_TRANSLATE_NOOP("NumberWords", "eleven"), QT_TRANSLATE_NOOP("NumberWords", "twelve"),
};

// In the order of SubdivisionName.
constexpr std::array subdivisions{
    QT_TRANSLATE_NOOP("NumberWords", "dotted halves"),
    QT_TRANSLATE_NOOP("NumberWords", "halves"),
    QT_TRANSLATE_NOOP("NumberWords", "dotted quarters"),
    QT_TRANSLATE_NOOP("NumberWords", "quarters"),
    QT_TRANSLATE_NOOP("NumberWords", "quarter triplets"),
    QT_TRANSLATE_NOOP("NumberWords", "eighths"),
    QT_TRANSLATE_NOOP("NumberWords", "eighth triplets"),
    QT_TRANSLATE_NOOP("NumberWords", "triplets"),
    QT_TRANSLATE_NOOP("NumberWords", "sixteenths"),
    QT_TRANSLATE_NOOP("NumberWords", "sixteenth triplets"),
    QT_TRANSLATE_NOOP("NumberWords", "quintuplets"),
    QT_TRANSLATE_NOOP("NumberWords", "sextuplets"),
    QT_TRANSLATE_NOOP("NumberWords", "septuplets"),
    QT_TRANSLATE_NOOP("NumberWords", "thirty-seconds"),
    QT_TRANSLATE_NOOP("NumberWords", "duplets"),
    QT_TRANSLATE_NOOP("NumberWords", "quadruplets"),
};
static_assert(subdivisions.size() == static_cast<std::size_t>(SubdivisionName::other));

} // namespace

QString numberWord(int count) {
    if (count < 1 || count > static_cast<int>(numbers.size())) return QLocale().toString(count);
    return QCoreApplication::translate("NumberWords", numbers[static_cast<std::size_t>(count - 1)]);
}

QString stopsWord(int stops) {
    if (stops == 0) return QCoreApplication::translate("NumberWords", "no stop");
    if (stops == 1) return QCoreApplication::translate("NumberWords", "1 stop");
    return QCoreApplication::translate("NumberWords", "%1 stops").arg(stops);
}

QString subdivisionWord(SubdivisionName name) {
    if (name == SubdivisionName::other) return {};
    return QCoreApplication::translate("NumberWords", subdivisions[static_cast<std::size_t>(name)]);
}

} // namespace piolo::models
