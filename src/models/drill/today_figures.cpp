// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/today_figures.h"

#include "models/text/formatter.h"

namespace piolo::models {

void TodayFigures::show(const PassageRecord& record, const DayFigures& day, int secureDays) {
    cleanText_ = day.runs == 0 ? tr("none yet") : tr("%1 of %2").arg(day.clean).arg(day.runs);
    bestText_ = record.best ? Formatter::tempo(*record.best) : tr("none yet");
    timeText_ = day.millis == 0 ? tr("none yet") : Formatter::duration(day.millis);
    const int days = record.secureDays();
    secureText_ = days >= secureDays ? tr("yes, on %n days", nullptr, days)
                                     : tr("on %1 of %n days", nullptr, secureDays).arg(days);
    emit changed();
}

} // namespace piolo::models
