// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curve_steps.h"

#include <algorithm>

namespace piolo::plots {

namespace {

bool inView(Date date, const CurveView& view) {
    if (view.days <= 0) return true;
    const auto age = view.today.daysSince1970() - date.daysSince1970();
    return age >= 0 && age < view.days;
}

bool isStep(const Entry& entry) { return entry.kind != Entry::Kind::tempo && entry.mark != Mark::voided; }

CurveStep stepOf(const Entry& entry) {
    const bool missed = entry.mark == Mark::missed;
    if (entry.kind == Entry::Kind::attempt)
        return {bpmOf(entry.after.tempo), missed ? StepMark::missedTry : StepMark::cleanTry,
                bpmOf(entry.tempo)};
    if (entry.kind != Entry::Kind::run) return {bpmOf(entry.after.tempo), StepMark::none, bpmOf(entry.tempo)};
    return {bpmOf(entry.tempo), missed ? StepMark::miss : StepMark::none, bpmOf(entry.tempo)};
}

void countDay(std::vector<CurveDay>& days, Date date, std::size_t step) {
    if (days.empty() || days.back().date != date) days.push_back({date, step, 0});
    ++days.back().count;
}

} // namespace

CurveView viewWithSteps(const PassageRecord& record, Date today, int days) {
    const auto& entries = record.entries.all();
    const auto last = std::find_if(entries.rbegin(), entries.rend(), isStep);
    const bool old = last != entries.rend() && !inView(last->at.date(), {today, days});
    return {old ? last->at.date() : today, days};
}

CurveSteps stepsOf(const PassageRecord& record, const CurveView& view) {
    CurveSteps made;
    made.target = bpmOf(record.passage.tempi.rule.target);
    made.last = bpmOf(record.standing.tempo);
    for (const Entry& entry : record.entries) {
        const Date date = entry.at.date();
        if (!inView(date, view)) continue;
        // Only the newest entry of all leads to the current standing.
        const bool newest = &entry == &record.entries.back();
        made.last = bpmOf(newest ? record.standing.tempo : entry.after.tempo);
        if (!isStep(entry)) continue;
        countDay(made.days, date, made.steps.size());
        made.steps.push_back(stepOf(entry));
    }
    return made;
}

} // namespace piolo::plots
