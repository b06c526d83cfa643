// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/today_figures.h"

#include "models/text/formatter.h"

namespace piolo::models {

void TodayFigures::show(const practice::PassageFigures& figures) {
    const DayFigures& day = figures.today;
    cleanText_ = day.runs == 0 ? qtTrId("today.none") : qtTrId("today.of").arg(day.clean).arg(day.runs);
    bestText_ = figures.best ? Formatter::tempo(*figures.best) : qtTrId("today.none");
    timeText_ = day.millis == 0 ? qtTrId("today.none") : Formatter::duration(day.millis);
    const int days = figures.secureDays;
    secureText_ = figures.isSecure() ? qtTrId("today.secure-yes", days)
                                     : qtTrId("today.secure-on", figures.secureDaysNeeded).arg(days);
    emit changed();
}

} // namespace piolo::models
