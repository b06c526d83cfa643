// SPDX-License-Identifier: GPL-3.0-or-later
// The choices in a passage's form, and its description of the passage typed so far.
#include "core/rule/usual_floor.h"
#include "models/passages/passage_editor.h"
#include "models/settings/setting_choices.h"
#include "models/text/beat_units.h"
#include "models/text/formatter.h"
#include "models/text/manner_words.h"
#include "practice/log/practice_book.h"
#include "text/passage_title.h"

namespace piolo::models {

namespace {

QString beatText(BeatUnit beat) {
    const QString sign = Formatter::beatSign(beat);
    const QString name = Formatter::beatName(beat);
    return sign == name ? name : sign + QLatin1Char(' ') + name;
}

} // namespace

QVariantList PassageEditor::pieces() const {
    QVariantList list{choice(QString(), qtTrId("form.on-its-own"))};
    for (const Piece& piece : book_.notebook().pieces())
        list << choice(QString::fromStdString(piece.id.text()), QString::fromStdString(piece.name));
    list << choice(QStringLiteral("new"), qtTrId("form.new-piece"));
    return list;
}

QVariantList PassageEditor::beats() const {
    const Meter& meter = check_.passage.music.meter;
    QVariantList list;
    for (const BeatUnit beat : beatUnits) {
        if (!Meter::make(meter.numerator(), meter.denominator(), beat)) continue;
        list << choice(beatWord(beat), beatText(beat));
    }
    return list;
}

QVariantList PassageEditor::subdivisions() const {
    QVariantList list;
    for (int pulses = 1; pulses <= 8; ++pulses)
        list << choice(pulses, Formatter::subdivision(check_.passage.music.meter.beat(), pulses));
    return list;
}

QString PassageEditor::beat() const { return beatWord(check_.passage.music.meter.beat()); }

QVariantList PassageEditor::articulations() { return articulationChoices(); }
QVariantList PassageEditor::rhythms() { return rhythmChoices(); }

QString PassageEditor::originText() const {
    const PassageRecord* const record = book_.notebook().passage(id_);
    if (record == nullptr || record->passage.title.origin.isNone()) return {};
    const PassageRecord* const origin = book_.notebook().passage(record->passage.title.origin);
    return origin == nullptr ? qtTrId("form.made-of-another")
                             : qtTrId("form.made-of").arg(text::passageTitle(origin->passage));
}

QString PassageEditor::usualTitle() const { return Formatter::bars(check_.passage.music); }

QString PassageEditor::usualGroups() const {
    const Meter& meter = check_.passage.music.meter;
    const auto usual = Meter::make(meter.numerator(), meter.denominator(), meter.beat());
    return usual ? QString::fromStdString(usual->groupsText()) : QString();
}

QString PassageEditor::usualFloor() const {
    return Formatter::tempo(piolo::usualFloor(check_.passage.tempi.start));
}

Standing PassageEditor::standing() const {
    const Tempi& tempi = check_.passage.tempi;
    const PassageRecord* record = book_.notebook().passage(id_);
    return record != nullptr ? piolo::edited(record->standing, tempi.rule) : Standing{tempi.start, 0};
}

} // namespace piolo::models
