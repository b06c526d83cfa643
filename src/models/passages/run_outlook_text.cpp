// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/run_outlook_text.h"

#include "models/text/formatter.h"

namespace piolo::models {

void RunOutlookText::show(const practice::RunOutlook& outlook, Tempo tempo) {
    outlook_ = outlook;
    tempo_ = tempo;
    emit changed();
}

QString RunOutlookText::settleSentence() const {
    return qtTrId("form.settles").arg(Formatter::ofHundred(outlook_.cleanShare));
}

QString RunOutlookText::timeSentence() const {
    const QString runs = Formatter::runs(outlook_.runsToMove);
    const QString climb = outlook_.climbs ? qtTrId("form.about-climb").arg(Formatter::tempo(tempo_), runs)
                                          : qtTrId("form.about-secure").arg(runs);
    if (!outlook_.runMillis) return qtTrId("form.run-open").arg(climb);
    return qtTrId("form.run")
        .arg(Formatter::duration(*outlook_.runMillis), climb, Formatter::duration(*outlook_.targetMillis));
}

QString RunOutlookText::proposal() const {
    if (!outlook_.runMillis) return {};
    const QString length = Formatter::duration(*outlook_.runMillis);
    if (outlook_.reasonableCleanRuns == 0) return qtTrId("form.run-long").arg(length);
    if (proposedCleanRuns() == 0) return {};
    return qtTrId("form.run-long-streak")
        .arg(length, Formatter::countWord(outlook_.cleanRuns), Formatter::countWord(proposedCleanRuns()));
}

} // namespace piolo::models
