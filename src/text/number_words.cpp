// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/number_words.h"

#include <QLocale>
#include <QtGlobal>

#include <array>

namespace piolo::text {

namespace {

constexpr std::array numbers{
    QT_TRID_NOOP("number.one"),   QT_TRID_NOOP("number.two"),    QT_TRID_NOOP("number.three"),
    QT_TRID_NOOP("number.four"),  QT_TRID_NOOP("number.five"),   QT_TRID_NOOP("number.six"),
    QT_TRID_NOOP("number.seven"), QT_TRID_NOOP("number.eight"),  QT_TRID_NOOP("number.nine"),
    QT_TRID_NOOP("number.ten"),   QT_TRID_NOOP("number.eleven"), QT_TRID_NOOP("number.twelve"),
};

// In the order of SubdivisionName.
constexpr std::array subdivisions{
    QT_TRID_NOOP("subdivision.dotted-halves"),    QT_TRID_NOOP("subdivision.halves"),
    QT_TRID_NOOP("subdivision.dotted-quarters"),  QT_TRID_NOOP("subdivision.quarters"),
    QT_TRID_NOOP("subdivision.quarter-triplets"), QT_TRID_NOOP("subdivision.eighths"),
    QT_TRID_NOOP("subdivision.eighth-triplets"),  QT_TRID_NOOP("subdivision.triplets"),
    QT_TRID_NOOP("subdivision.sixteenths"),       QT_TRID_NOOP("subdivision.sixteenth-triplets"),
    QT_TRID_NOOP("subdivision.quintuplets"),      QT_TRID_NOOP("subdivision.sextuplets"),
    QT_TRID_NOOP("subdivision.septuplets"),       QT_TRID_NOOP("subdivision.thirty-seconds"),
    QT_TRID_NOOP("subdivision.duplets"),          QT_TRID_NOOP("subdivision.quadruplets"),
};
static_assert(subdivisions.size() == static_cast<std::size_t>(SubdivisionName::other));

} // namespace

QString numberWord(int count) {
    if (count < 1 || count > static_cast<int>(numbers.size())) return QLocale().toString(count);
    return qtTrId(numbers[static_cast<std::size_t>(count - 1)]);
}

QString stopsWord(int stops) {
    return stops == 0 ? qtTrId("run-through.no-stop") : qtTrId("run-through.stops", stops);
}

QString subdivisionWord(SubdivisionName name) {
    if (name == SubdivisionName::other) return {};
    return qtTrId(subdivisions[static_cast<std::size_t>(name)]);
}

} // namespace piolo::text
