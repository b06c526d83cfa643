// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/difference_words.h"

#include "models/text/fault_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <string_view>

namespace piolo::models {

namespace {

struct KeyWord {
    std::string_view key;
    const char* word;
};

constexpr KeyWord keyWords[] = {
    {"name", QT_TRANSLATE_NOOP("Difference", "name")},
    {"instrument", QT_TRANSLATE_NOOP("Difference", "instrument")},
    {"due", QT_TRANSLATE_NOOP("Difference", "date")},
    {"composer", QT_TRANSLATE_NOOP("Difference", "composer")},
    {"transposition", QT_TRANSLATE_NOOP("Difference", "transposition in semitones")},
    {"bars", QT_TRANSLATE_NOOP("Difference", "bars")},
    {"notes", QT_TRANSLATE_NOOP("Difference", "notes")},
    {"notation", QT_TRANSLATE_NOOP("Difference", "printed notes")},
    {"title.name", QT_TRANSLATE_NOOP("Difference", "name")},
    {"title.piece", QT_TRANSLATE_NOOP("Difference", "piece")},
    {"title.origin", QT_TRANSLATE_NOOP("Difference", "made of passage")},
    {"music.meter", QT_TRANSLATE_NOOP("Difference", "meter")},
    {"music.beat", QT_TRANSLATE_NOOP("Difference", "beat")},
    {"music.groups", QT_TRANSLATE_NOOP("Difference", "groups")},
    {"music.tempo", QT_TRANSLATE_NOOP("Difference", "tempo")},
    {"music.subdivision", QT_TRANSLATE_NOOP("Difference", "pulses to the beat")},
    {"music.pickup", QT_TRANSLATE_NOOP("Difference", "pick-up")},
    {"music.firstBar", QT_TRANSLATE_NOOP("Difference", "first bar")},
    {"music.bars", QT_TRANSLATE_NOOP("Difference", "bars")},
    {"music.landing", QT_TRANSLATE_NOOP("Difference", "landing note")},
    {"music.countInBars", QT_TRANSLATE_NOOP("Difference", "bars of count-in")},
    {"music.breathBeats", QT_TRANSLATE_NOOP("Difference", "beats of breath")},
    {"tempi.start", QT_TRANSLATE_NOOP("Difference", "start")},
    {"tempi.target", QT_TRANSLATE_NOOP("Difference", "target")},
    {"tempi.floor", QT_TRANSLATE_NOOP("Difference", "floor")},
    {"tempi.step", QT_TRANSLATE_NOOP("Difference", "steps in")},
    {"tempi.drop", QT_TRANSLATE_NOOP("Difference", "drop")},
    {"tempi.climb", QT_TRANSLATE_NOOP("Difference", "climb")},
    {"tempi.cleanRuns", QT_TRANSLATE_NOOP("Difference", "clean runs")},
    {"tempi.gentle", QT_TRANSLATE_NOOP("Difference", "gentle near the target")},
    {"manner.articulation", QT_TRANSLATE_NOOP("Difference", "articulation")},
    {"manner.rhythm", QT_TRANSLATE_NOOP("Difference", "rhythm")},
    {"manner.group", QT_TRANSLATE_NOOP("Difference", "notes to a group")},
    {"manner.fingering", QT_TRANSLATE_NOOP("Difference", "fingering")},
    {"scale", QT_TRANSLATE_NOOP("Difference", "scale")},
    {"scale.tonic", QT_TRANSLATE_NOOP("Difference", "key")},
    {"scale.kind", QT_TRANSLATE_NOOP("Difference", "kind of scale")},
    {"scale.range", QT_TRANSLATE_NOOP("Difference", "range")},
    {"scale.pattern", QT_TRANSLATE_NOOP("Difference", "order of notes")},
    {"scale.notes", QT_TRANSLATE_NOOP("Difference", "notes to the beat")},
    {"scale.instrument", QT_TRANSLATE_NOOP("Difference", "instrument")},
    {"click.on", QT_TRANSLATE_NOOP("Difference", "click on")},
    {"click.accents", QT_TRANSLATE_NOOP("Difference", "accents")},
    {"click.swing", QT_TRANSLATE_NOOP("Difference", "swing")},
    {"click.swung", QT_TRANSLATE_NOOP("Difference", "swung notes")},
    {"click.barsOn", QT_TRANSLATE_NOOP("Difference", "bars with the click")},
    {"click.barsOff", QT_TRANSLATE_NOOP("Difference", "bars without the click")},
    {"click.silentBars", QT_TRANSLATE_NOOP("Difference", "silent bars of a hundred")},
    {"click.leftOutBeats", QT_TRANSLATE_NOOP("Difference", "beats left out of a hundred")},
    {"click.seed", QT_TRANSLATE_NOOP("Difference", "number for chance")},
    {"click.breaths", QT_TRANSLATE_NOOP("Difference", "waits for breath")},
    {"click.breathBelow", QT_TRANSLATE_NOOP("Difference", "waits below")},
};

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Difference)
};

QString valueWords(const std::string& value) { return value.empty() ? Words::tr("none") : onOneLine(value); }

} // namespace

QString differenceWords(const Difference& difference) {
    const auto* const found = std::ranges::find(keyWords, std::string_view(difference.key), &KeyWord::key);
    const QString word =
        found == std::end(keyWords) ? QString::fromStdString(difference.key) : Words::tr(found->word);
    return Words::tr("%1: %2 → %3").arg(word, valueWords(difference.from), valueWords(difference.to));
}

QString stateWords(ImportState state) {
    switch (state) {
    case ImportState::added:
        return Words::tr("new");
    case ImportState::same:
        return Words::tr("the same");
    case ImportState::differs:
        return Words::tr("differs");
    case ImportState::removedHere:
        break;
    }
    return Words::tr("removed here");
}

} // namespace piolo::models
