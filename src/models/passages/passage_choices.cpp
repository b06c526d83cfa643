// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_choices.h"

#include "models/passages/click_draft.h"
#include "models/passages/typed_passage.h"
#include "models/settings/setting_choices.h"
#include "models/text/beat_units.h"
#include "models/text/click_words.h"
#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "models/text/manner_words.h"
#include "practice/log/practice_book.h"
#include "text/one_line.h"

namespace piolo::models {

namespace {

QString beatText(BeatUnit beat) {
    const QString sign = Formatter::beatSign(beat);
    const QString name = Formatter::beatName(beat);
    return sign == name ? name : sign + QLatin1Char(' ') + name;
}

} // namespace

PassageChoices::PassageChoices(const practice::PracticeBook& book, QObject* parent)
    : QObject(parent), book_(book) {
    connect(&book_, &practice::PracticeBook::changed, this, &PassageChoices::piecesChanged);
}

void PassageChoices::follow(const Passage& passage) {
    passage_ = passage;
    emit changed();
}

QVariantList PassageChoices::pieces() const {
    QVariantList list{choice(QString(), qtTrId("form.on-its-own"))};
    for (const Piece& piece : book_.notebook().pieces())
        list << choice(idText(piece.id), text::nameShown(piece.name));
    list << choice(QString::fromLatin1(newPieceChoice), qtTrId("form.new-piece"));
    return list;
}

QVariantList PassageChoices::beats() const {
    const Meter& meter = passage_.music.meter;
    QVariantList list;
    for (const BeatUnit beat : beatUnits) {
        if (!Meter::make(meter.numerator(), meter.denominator(), beat)) continue;
        list << choice(beatWord(beat), beatText(beat));
    }
    return list;
}

QString PassageChoices::beat() const { return beatWord(passage_.music.meter.beat()); }

QVariantList PassageChoices::subdivisions() const {
    QVariantList list;
    for (int pulses = 1; pulses <= 8; ++pulses)
        list << choice(pulses, Formatter::subdivision(passage_.music.meter.beat(), pulses));
    return list;
}

QVariantList PassageChoices::clickPlaces() {
    QVariantList list;
    for (const ClickOn on : {ClickOn::beats, ClickOn::downbeats, ClickOn::backbeats, ClickOn::offbeats})
        list << choice(static_cast<int>(on), clickOnWords(on));
    return list;
}

QVariantList PassageChoices::swungNotes() {
    QVariantList list;
    for (const SwungNotes notes : {SwungNotes::eighths, SwungNotes::sixteenths})
        list << choice(static_cast<int>(notes), swungWords(notes));
    return list;
}

QVariantList PassageChoices::accents() const {
    QVariantList list;
    for (int beat = 0; beat < passage_.music.meter.beatsPerBar(); ++beat) {
        const Accent accent = accentOf(passage_.click, passage_.music.meter, beat);
        list << choice(static_cast<int>(accent),
                       qtTrId("form.accent").arg(QString::number(beat + 1), accentWords(accent)));
    }
    return list;
}

QVariantList PassageChoices::articulations() { return articulationChoices(); }
QVariantList PassageChoices::rhythms() { return rhythmChoices(); }

} // namespace piolo::models
