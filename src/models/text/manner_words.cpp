// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/manner_words.h"

#include "models/settings/setting_choices.h"
#include "models/text/number_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace piolo::models {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(MannerWords)
};

} // namespace

QString articulationText(Articulation articulation) {
    switch (articulation) {
    case Articulation::written:
        return Words::tr("as written");
    case Articulation::slurred:
        return Words::tr("all slurred");
    case Articulation::tongued:
        return Words::tr("all tongued");
    case Articulation::staccato:
        return Words::tr("staccato");
    case Articulation::twoAndTwo:
        return Words::tr("slur two, tongue two");
    case Articulation::threeAndOne:
        return Words::tr("slur three, tongue one");
    case Articulation::oneAndThree:
        return Words::tr("tongue one, slur three");
    case Articulation::doubleTongued:
        break;
    }
    return Words::tr("double-tongued");
}

QString rhythmText(const Manner& manner) {
    switch (manner.rhythm) {
    case Rhythm::written:
        return Words::tr("as written");
    case Rhythm::dotted:
        return Words::tr("long and short");
    case Rhythm::reversed:
        return Words::tr("short and long");
    case Rhythm::groups:
        break;
    }
    return Words::tr("in groups of %1").arg(numberWord(manner.group));
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
    if (rhythm == Rhythm::groups) return joined(articulation, Words::tr("in groups"));
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
    return list << choice(static_cast<int>(Rhythm::groups), Words::tr("in groups"));
}

} // namespace piolo::models
