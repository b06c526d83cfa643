// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/taken_back_words.h"

#include "models/text/formatter.h"

#include <QtGlobal>

namespace piolo::models {

namespace {

QString runWords(const practice::TakenBack& taken) {
    const QString tempo = Formatter::tempo(taken.tempo);
    if (taken.mark == Mark::clean) return qtTrId("taken-back.clean").arg(tempo);
    if (taken.mark == Mark::voided) return qtTrId("taken-back.void").arg(tempo);
    return taken.spot ? qtTrId("taken-back.missed-in").arg(tempo, Formatter::spot(*taken.spot))
                      : qtTrId("taken-back.missed").arg(tempo);
}

QString what(const practice::TakenBack& taken) {
    using What = practice::TakenBack::What;
    const QString tempo = Formatter::tempo(taken.tempo);
    switch (taken.what) {
    case What::run:
        return runWords(taken);
    case What::tempo:
        return qtTrId("taken-back.tempo").arg(tempo);
    case What::lateMiss:
        return qtTrId("taken-back.late").arg(tempo);
    case What::doubt:
        return qtTrId("taken-back.doubt", static_cast<int>(taken.runs));
    case What::mark:
        return qtTrId("taken-back.mark").arg(tempo);
    case What::runThrough:
        return qtTrId("taken-back.run-through");
    }
    return {};
}

} // namespace

QString takenBackWords(const practice::TakenBack& taken) {
    return qtTrId("taken-back.line").arg(what(taken));
}

} // namespace piolo::models
