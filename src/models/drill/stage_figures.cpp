// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/stage_figures.h"

#include <QtGlobal>

#include <algorithm>
#include <array>

namespace piolo::models {

namespace {

/// The ids of a stage's texts: %1 is the player's progress towards the next stage, %2 or %n what it takes.
struct StageTexts {
    Stage stage;
    const char* name;
    const char* evidence;
    const char* reached = nullptr; ///< instead of `evidence` once the progress is complete; null: the same
    bool counts = false;           ///< `evidence` has forms for singular and plural
};

constexpr std::array stageTexts{
    StageTexts{Stage::slow, QT_TRID_NOOP("stage.slow"), QT_TRID_NOOP("stage.standing.next-full-streak"),
               QT_TRID_NOOP("stage.standing.full-streak")},
    StageTexts{Stage::secure, QT_TRID_NOOP("stage.secure"), QT_TRID_N_NOOP("stage.standing.secure"), nullptr,
               true},
    StageTexts{Stage::withoutClick, QT_TRID_NOOP("stage.without-click"),
               QT_TRID_NOOP("stage.standing.without-click")},
    StageTexts{Stage::inContext, QT_TRID_NOOP("stage.in-context"), QT_TRID_NOOP("stage.standing.in-context")},
    StageTexts{Stage::runThroughs, QT_TRID_NOOP("stage.run-throughs"),
               QT_TRID_NOOP("stage.standing.run-throughs")},
};
static_assert(std::ranges::equal(stageTexts, stageTable, {}, &StageTexts::stage, &StageInfo::stage),
              "every stage has its texts, in the order of the table");

const StageTexts& textsOf(Stage stage) { return stageTexts.at(static_cast<std::size_t>(stage)); }

QString evidenceOf(Stage stage, const StageStep& step) {
    const StageTexts& texts = textsOf(stage);
    const char* const id = step.reached() && texts.reached != nullptr ? texts.reached : texts.evidence;
    QString line = texts.counts ? qtTrId(id, step.need) : qtTrId(id);
    line.replace(QLatin1String("%1"), QString::number(std::min(step.have, step.need)));
    return line.replace(QLatin1String("%2"), QString::number(step.need));
}

} // namespace

QString stageName(Stage stage) { return qtTrId(textsOf(stage).name); }

QStringList StageFigures::names() {
    QStringList list;
    for (const StageInfo& info : stageTable) list << stageName(info.stage);
    return list;
}

void StageFigures::show(const practice::PassageFigures& figures) {
    stage_ = figures.stage;
    evidence_ = evidenceOf(figures.stage, figures.step);
    const auto suggested = figures.suggested();
    proposed_ = suggested ? stageName(*suggested) : QString();
    emit changed();
}

} // namespace piolo::models
