// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/played_as.h"

#include "models/settings/setting_choices.h"
#include "models/text/beat_units.h"
#include "models/text/formatter.h"
#include "models/text/manner_words.h"
#include "practice/figures/passage_figures.h"
#include "practice/log/practice_book.h"

#include <QStringList>

namespace piolo::models {

namespace {

QVariantList beatsOf(const PassageRecord& record, Tempo tempo) {
    QVariantList list;
    for (const auto& [beat, felt] : practice::feltBeats(record, tempo, beatUnits))
        list << choice(beatWord(beat), qtTrId("drill.felt-as").arg(Formatter::tempoMark(beat, felt)));
    return list;
}

QString bestsOf(const PassageRecord& record) {
    QStringList bests;
    for (std::size_t place = 0; place < articulationCount; ++place)
        if (record.bests[place])
            bests << qtTrId("drill.best.item")
                         .arg(articulationText(static_cast<Articulation>(place)),
                              Formatter::tempo(*record.bests[place]));
    return practice::hasSeveralBests(record) ? qtTrId("drill.best").arg(bests.join(QStringLiteral(", ")))
                                             : QString();
}

} // namespace

QVariantList PlayedAs::articulations() { return articulationChoices(); }
QVariantList PlayedAs::rhythms() { return rhythmChoices(); }
QString PlayedAs::beat() const { return beatWord(passage_.music.meter.beat()); }
QString PlayedAs::text() const { return mannerText(passage_.manner); }
QString PlayedAs::fingering() const { return QString::fromStdString(passage_.manner.fingering); }

void PlayedAs::show(const PassageRecord& record, Tempo tempo, bool open) {
    open_ = open && !book_.readOnly();
    if (!open) return; // none of it changes while the click runs
    passage_ = record.passage;
    beats_ = beatsOf(record, tempo);
    bests_ = bestsOf(record);
    emit changed();
}

void PlayedAs::feel(const QString& beat) {
    const auto unit = parseBeatUnit(beat.toStdString());
    if (!open_ || !unit || *unit == passage_.music.meter.beat()) return;
    emit felt();
    book_.record(FeltBeatFact{passage_.id, *unit});
}

void PlayedAs::setArticulation(int articulation) {
    if (articulation < 0 || articulation >= static_cast<int>(articulationCount)) return;
    Manner manner = passage_.manner;
    manner.articulation = static_cast<Articulation>(articulation);
    record(manner);
}

void PlayedAs::setRhythm(int rhythm) {
    if (rhythm < 0 || rhythm > static_cast<int>(Rhythm::groups)) return;
    Manner manner = passage_.manner;
    manner.rhythm = static_cast<Rhythm>(rhythm);
    record(manner);
}

void PlayedAs::record(const Manner& manner) {
    if (!open_ || manner == passage_.manner) return;
    PassageFact edit;
    edit.passage = passage_.id;
    edit.manner = manner;
    book_.record(edit);
}

} // namespace piolo::models
