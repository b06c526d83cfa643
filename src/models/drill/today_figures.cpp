// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/today_figures.h"

#include "models/text/formatter.h"

namespace piolo::models {

void TodayFigures::show(const PassageRecord& record, const DayFigures& day, int secureDays) {
    cleanText_ = day.runs == 0 ? qtTrId("today.none") : qtTrId("today.of").arg(day.clean).arg(day.runs);
    bestText_ = record.best ? Formatter::tempo(*record.best) : qtTrId("today.none");
    timeText_ = day.millis == 0 ? qtTrId("today.none") : Formatter::duration(day.millis);
    const int days = record.secureDays();
    secureText_ = days >= secureDays ? qtTrId("today.secure-yes", days)
                                     : qtTrId("today.secure-on", secureDays).arg(days);
    emit changed();
}

} // namespace piolo::models
