// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/difference_words.h"

#include "text/one_line.h"

#include <QtGlobal>

#include <algorithm>
#include <string_view>

namespace piolo::models {

namespace {

struct KeyWord {
    std::string_view key;
    const char* word;
};

constexpr KeyWord keyWords[] = {
    {"name", QT_TRID_NOOP("difference.name")},
    {"instrument", QT_TRID_NOOP("difference.instrument")},
    {"due", QT_TRID_NOOP("difference.due")},
    {"composer", QT_TRID_NOOP("difference.composer")},
    {"transposition", QT_TRID_NOOP("difference.transposition")},
    {"bars", QT_TRID_NOOP("difference.bars")},
    {"notes", QT_TRID_NOOP("difference.notes")},
    {"notation", QT_TRID_NOOP("difference.notation")},
    {"title.name", QT_TRID_NOOP("difference.name")},
    {"title.piece", QT_TRID_NOOP("difference.piece")},
    {"title.origin", QT_TRID_NOOP("difference.origin")},
    {"music.meter", QT_TRID_NOOP("difference.meter")},
    {"music.beat", QT_TRID_NOOP("difference.beat")},
    {"music.groups", QT_TRID_NOOP("difference.groups")},
    {"music.tempo", QT_TRID_NOOP("difference.tempo")},
    {"music.subdivision", QT_TRID_NOOP("difference.subdivision")},
    {"music.pickup", QT_TRID_NOOP("difference.pick-up")},
    {"music.firstBar", QT_TRID_NOOP("difference.first-bar")},
    {"music.bars", QT_TRID_NOOP("difference.bars")},
    {"music.landing", QT_TRID_NOOP("difference.landing")},
    {"music.countInBars", QT_TRID_NOOP("difference.count-in")},
    {"music.breathBeats", QT_TRID_NOOP("difference.breath")},
    {"tempi.start", QT_TRID_NOOP("difference.start")},
    {"tempi.target", QT_TRID_NOOP("difference.target")},
    {"tempi.floor", QT_TRID_NOOP("difference.floor")},
    {"tempi.step", QT_TRID_NOOP("difference.step")},
    {"tempi.drop", QT_TRID_NOOP("difference.drop")},
    {"tempi.climb", QT_TRID_NOOP("difference.climb")},
    {"tempi.cleanRuns", QT_TRID_NOOP("difference.clean-runs")},
    {"tempi.gentle", QT_TRID_NOOP("difference.gentle")},
    {"manner.articulation", QT_TRID_NOOP("difference.articulation")},
    {"manner.rhythm", QT_TRID_NOOP("difference.rhythm")},
    {"manner.group", QT_TRID_NOOP("difference.group")},
    {"manner.fingering", QT_TRID_NOOP("difference.fingering")},
    {"scale", QT_TRID_NOOP("difference.scale")},
    {"scale.tonic", QT_TRID_NOOP("difference.key")},
    {"scale.kind", QT_TRID_NOOP("difference.scale-kind")},
    {"scale.range", QT_TRID_NOOP("difference.range")},
    {"scale.pattern", QT_TRID_NOOP("difference.pattern")},
    {"scale.notes", QT_TRID_NOOP("difference.notes-per-beat")},
    {"scale.instrument", QT_TRID_NOOP("difference.instrument")},
    {"click.on", QT_TRID_NOOP("difference.click-on")},
    {"click.accents", QT_TRID_NOOP("difference.accents")},
    {"click.swing", QT_TRID_NOOP("difference.swing")},
    {"click.swung", QT_TRID_NOOP("difference.swung")},
    {"click.barsOn", QT_TRID_NOOP("difference.bars-on")},
    {"click.barsOff", QT_TRID_NOOP("difference.bars-off")},
    {"click.silentBars", QT_TRID_NOOP("difference.silent-bars")},
    {"click.leftOutBeats", QT_TRID_NOOP("difference.beats-left-out")},
    {"click.seed", QT_TRID_NOOP("difference.seed")},
    {"click.breaths", QT_TRID_NOOP("difference.breaths")},
    {"click.breathBelow", QT_TRID_NOOP("difference.breath-below")},
};

QString valueWords(const std::string& value) {
    return value.empty() ? qtTrId("difference.none") : text::onOneLine(value);
}

} // namespace

QString differenceWords(const Difference& difference) {
    const auto* const found = std::ranges::find(keyWords, std::string_view(difference.key), &KeyWord::key);
    const QString word =
        found == std::end(keyWords) ? QString::fromStdString(difference.key) : qtTrId(found->word);
    return qtTrId("difference.change").arg(word, valueWords(difference.from), valueWords(difference.to));
}

QString stateWords(ImportState state) {
    switch (state) {
    case ImportState::added:
        return qtTrId("difference.new");
    case ImportState::same:
        return qtTrId("difference.same");
    case ImportState::differs:
        return qtTrId("difference.differs");
    case ImportState::removedHere:
        break;
    }
    return qtTrId("difference.removed");
}

} // namespace piolo::models
