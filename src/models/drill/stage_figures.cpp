// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/stage_figures.h"

#include "models/text/formatter.h"

namespace piolo::models {

namespace {

constexpr int stages = 5;

QString evidenceOf(Stage stage, const StageStep& step) {
    switch (stage) {
    case Stage::slow:
        return step.reached() ? StageFigures::tr("There was a full streak at the target.")
                              : StageFigures::tr("Next: a full streak at the target.");
    case Stage::secure:
        return StageFigures::tr("Secure at the target on %1 of %n days.", nullptr, step.need).arg(step.have);
    case Stage::withoutClick:
        return StageFigures::tr("Clean in a row without the click, on one day: %1 of %2.")
            .arg(step.have)
            .arg(step.need);
    case Stage::inContext:
        return StageFigures::tr("Clean in a row in context, on one day: %1 of %2.")
            .arg(step.have)
            .arg(step.need);
    case Stage::runThroughs:
        break;
    }
    return StageFigures::tr("Run-throughs in a row without a stop here: %1 of %2.")
        .arg(step.have)
        .arg(step.need);
}

} // namespace

QString stageName(Stage stage) {
    switch (stage) {
    case Stage::slow:
        return StageFigures::tr("slow with the click");
    case Stage::secure:
        return StageFigures::tr("secure at the target");
    case Stage::withoutClick:
        return StageFigures::tr("without the click");
    case Stage::inContext:
        return StageFigures::tr("in context");
    case Stage::runThroughs:
        break;
    }
    return StageFigures::tr("in run-throughs");
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
