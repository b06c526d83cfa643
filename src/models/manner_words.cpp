// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/manner_words.h"

#include "models/number_words.h"
#include "models/setting_choices.h"

#include <QCoreApplication>
#include <QStringList>

namespace piolo::models {

namespace {

QString words(const char* text) { return QCoreApplication::translate("MannerWords", text); }

} // namespace

QString articulationText(Articulation articulation) {
    switch (articulation) {
    case Articulation::written:
        return words("as written");
    case Articulation::slurred:
        return words("all slurred");
    case Articulation::tongued:
        return words("all tongued");
    case Articulation::staccato:
        return words("staccato");
    case Articulation::twoAndTwo:
        return words("slur two, tongue two");
    case Articulation::threeAndOne:
        return words("slur three, tongue one");
    case Articulation::oneAndThree:
        return words("tongue one, slur three");
    case Articulation::doubleTongued:
        break;
    }
    return words("double-tongued");
}

QString rhythmText(const Manner& manner) {
    switch (manner.rhythm) {
    case Rhythm::written:
        return words("as written");
    case Rhythm::dotted:
        return words("long and short");
    case Rhythm::reversed:
        return words("short and long");
    case Rhythm::groups:
        break;
    }
    return words("in groups of %1").arg(numberWord(manner.group));
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
    if (rhythm == Rhythm::groups) return joined(articulation, words("in groups"));
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
    return list << choice(static_cast<int>(Rhythm::groups), words("in groups"));
}

} // namespace piolo::models
