// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/manner_words.h"

#include "models/settings/setting_choices.h"
#include "text/number_words.h"

#include <QStringList>
#include <QtGlobal>

namespace piolo::models {

QString articulationText(Articulation articulation) {
    switch (articulation) {
    case Articulation::written:
        return qtTrId("manner.as-written");
    case Articulation::slurred:
        return qtTrId("manner.slurred");
    case Articulation::tongued:
        return qtTrId("manner.tongued");
    case Articulation::staccato:
        return qtTrId("manner.staccato");
    case Articulation::twoAndTwo:
        return qtTrId("manner.slur-two-tongue-two");
    case Articulation::threeAndOne:
        return qtTrId("manner.slur-three-tongue-one");
    case Articulation::oneAndThree:
        return qtTrId("manner.tongue-one-slur-three");
    case Articulation::doubleTongued:
        break;
    }
    return qtTrId("manner.double-tongued");
}

QString rhythmText(const Manner& manner) {
    switch (manner.rhythm) {
    case Rhythm::written:
        return qtTrId("manner.as-written");
    case Rhythm::dotted:
        return qtTrId("manner.long-short");
    case Rhythm::reversed:
        return qtTrId("manner.short-long");
    case Rhythm::groups:
        break;
    }
    return qtTrId("manner.in-groups-of").arg(text::numberWord(manner.group));
}

namespace {

QString joined(Articulation articulation, const QString& rhythm) {
    QStringList parts;
    if (articulation != Articulation::written) parts << articulationText(articulation);
    if (!rhythm.isEmpty()) parts << rhythm;
    return parts.join(QStringLiteral(" · "));
}

} // namespace

QString mannerText(const Manner& manner) {
    return joined(manner.articulation, manner.rhythm == Rhythm::written ? QString() : rhythmText(manner));
}

QString mannerText(Articulation articulation, Rhythm rhythm) {
    if (rhythm == Rhythm::groups) return joined(articulation, qtTrId("manner.in-groups"));
    Manner manner;
    manner.articulation = articulation;
    manner.rhythm = rhythm;
    return mannerText(manner);
}

QVariantList articulationChoices() {
    QVariantList list;
    for (std::size_t place = 0; place < articulationCount; ++place)
        list << choice(static_cast<int>(place), articulationText(static_cast<Articulation>(place)));
    return list;
}

QVariantList rhythmChoices() {
    QVariantList list;
    for (const Rhythm rhythm : {Rhythm::written, Rhythm::dotted, Rhythm::reversed}) {
        Manner manner;
        manner.rhythm = rhythm;
        list << choice(static_cast<int>(rhythm), rhythmText(manner));
    }
    return list << choice(static_cast<int>(Rhythm::groups), qtTrId("manner.in-groups"));
}

} // namespace piolo::models
