// SPDX-License-Identifier: GPL-3.0-or-later
// What the form of a passage offers, and what it says of the passage typed.
#include "core/rule/settle.h"
#include "core/rule/usual_floor.h"
#include "core/time/duration.h"
#include "models/passages/passage_editor.h"
#include "models/settings/setting_choices.h"
#include "models/text/beat_units.h"
#include "models/text/formatter.h"
#include "models/text/manner_words.h"
#include "practice/log/practice_book.h"
#include "text/passage_title.h"

#include <algorithm>
#include <cmath>

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

std::int64_t PassageEditor::runLength() const { return runMillis(check_.passage.music, standing().tempo); }

QString PassageEditor::settleSentence() const {
    return qtTrId("form.settles").arg(Formatter::ofHundred(settlesAt(check_.passage.tempi.rule)));
}

QString PassageEditor::timeSentence() const {
    const Passage& passage = check_.passage;
    const Rule& rule = passage.tempi.rule;
    const Standing now = standing();
    const auto runs =
        static_cast<int>(std::min(999'999L, std::lround(expectedRunsToClimb(0.9, rule.cleanRuns))));
    const QString climb =
        now.tempo < rule.target
            ? qtTrId("form.about-climb").arg(Formatter::tempo(now.tempo), Formatter::runs(runs))
            : qtTrId("form.about-secure").arg(Formatter::runs(runs));
    if (passage.music.bars == 0) return qtTrId("form.run-open").arg(climb);
    const qint64 whole = millisToTarget(passage.music, rule, now);
    return qtTrId("form.run").arg(Formatter::duration(runLength()), climb, Formatter::duration(whole));
}

int PassageEditor::proposedCleanRuns() const {
    if (check_.passage.music.bars == 0) return 0;
    const int proposed = piolo::proposedCleanRuns(runLength());
    return proposed < check_.passage.tempi.rule.cleanRuns ? proposed : 0;
}

QString PassageEditor::proposal() const {
    if (check_.passage.music.bars == 0) return {};
    const QString length = Formatter::duration(runLength());
    if (piolo::proposedCleanRuns(runLength()) == 0) return qtTrId("form.run-long").arg(length);
    if (proposedCleanRuns() == 0) return {};
    return qtTrId("form.run-long-streak")
        .arg(length, Formatter::countWord(check_.passage.tempi.rule.cleanRuns),
             Formatter::countWord(proposedCleanRuns()));
}

} // namespace piolo::models
