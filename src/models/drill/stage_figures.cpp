// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/stage_figures.h"

#include "models/text/formatter.h"

namespace piolo::models {

namespace {

constexpr int stages = 5;

QString evidenceOf(Stage stage, const StageStep& step) {
    switch (stage) {
    case Stage::slow:
        return step.reached() ? qtTrId("stage.standing.full-streak")
                              : qtTrId("stage.standing.next-full-streak");
    case Stage::secure:
        return qtTrId("stage.standing.secure", step.need).arg(step.have);
    case Stage::withoutClick:
        return qtTrId("stage.standing.without-click").arg(step.have).arg(step.need);
    case Stage::inContext:
        return qtTrId("stage.standing.in-context").arg(step.have).arg(step.need);
    case Stage::runThroughs:
        break;
    }
    return qtTrId("stage.standing.run-throughs").arg(step.have).arg(step.need);
}

} // namespace

QString stageName(Stage stage) {
    switch (stage) {
    case Stage::slow:
        return qtTrId("stage.slow");
    case Stage::secure:
        return qtTrId("stage.secure");
    case Stage::withoutClick:
        return qtTrId("stage.without-click");
    case Stage::inContext:
        return qtTrId("stage.in-context");
    case Stage::runThroughs:
        break;
    }
    return qtTrId("stage.run-throughs");
}

QStringList StageFigures::names() {
    QStringList list;
    for (int stage = 0; stage < stages; ++stage) list << stageName(static_cast<Stage>(stage));
    return list;
}

void StageFigures::show(Stage stage, const StageStep& step) {
    stage_ = stage;
    evidence_ = evidenceOf(stage, step);
    proposed_ = step.reached() && step.next != stage ? stageName(step.next) : QString();
    emit changed();
}

} // namespace piolo::models
