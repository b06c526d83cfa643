// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/sitting_words.h"

#include <QStringList>

#include <set>

namespace piolo::models {

namespace {

/// "1 missed in bar 42": as many bars as fit in a line.
QString missedIn(const QString& missed, const std::set<std::int32_t>& bars) {
    constexpr std::size_t most = 4;
    if (bars.empty() || bars.size() > most) return missed;
    QStringList numbers;
    for (const std::int32_t bar : bars) numbers << QString::number(bar);
    const QString where = numbers.size() == 1
                              ? qtTrId("log.line.bar").arg(numbers.front())
                              : qtTrId("log.line.bars").arg(numbers.join(QStringLiteral(", ")));
    return qtTrId("drill.sitting.where").arg(missed, where);
}

} // namespace

QString sittingWords(const practice::SittingFigures& figures) {
    if (figures.runs() == 0) return {};
    QStringList parts;
    if (figures.clean > 0) parts << qtTrId("log.line.count-clean").arg(figures.clean);
    if (figures.missed > 0)
        parts << missedIn(qtTrId("log.line.count-missed").arg(figures.missed), figures.missedBars);
    return qtTrId("drill.sitting", figures.runs()).arg(parts.join(QStringLiteral(", ")));
}

} // namespace piolo::models
