// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/drill/drill_text.h"

#include "models/text/formatter.h"
#include "models/text/passage_about.h"
#include "models/text/run_kind_words.h"
#include "models/text/sitting_words.h"
#include "models/text/taken_back_words.h"
#include "text/passage_title.h"

namespace piolo::models {

DrillText::DrillText(const practice::PracticeBook& book, const practice::DrillControl& control,
                     QObject* parent)
    : QObject(parent), book_(book), control_(control) {
    using Control = practice::DrillControl;
    connect(&control_, &Control::opened, this, &DrillText::reword);
    connect(&control_, &Control::recordChanged, this, &DrillText::reword);
    connect(&control_, &Control::standingChanged, this, &DrillText::standingChanged);
    connect(&control_, &Control::standingChanged, this, &DrillText::reasonChanged);
    connect(&control_, &Control::stateChanged, this, &DrillText::reasonChanged);
    connect(&control_, &Control::stateChanged, this, &DrillText::takenBackChanged);
    connect(&control_, &Control::feedbackChanged, this, &DrillText::takenBackChanged);
    connect(&control_, &Control::feedbackChanged, this, &DrillText::feedbackChanged);
}

void DrillText::reword() {
    emit passageChanged();
    emit standingChanged();
    emit reasonChanged();
    emit feedbackChanged();
}

QString DrillText::title() const {
    const PassageRecord* known = control_.record();
    return known == nullptr ? QString() : text::passageTitle(known->passage);
}

QString DrillText::about() const {
    const PassageRecord* known = control_.record();
    return known == nullptr ? QString() : aboutPassage(book_.notebook(), known->passage);
}

QString DrillText::target() const {
    const PassageRecord* known = control_.record();
    return known == nullptr ? QString() : Formatter::tempo(known->passage.tempi.rule.target);
}

QString DrillText::tempo() const { return Formatter::tempo(control_.standing().tempo); }

QString DrillText::tempoLine() const {
    const PassageRecord* known = control_.record();
    return known == nullptr ? QString()
                            : Formatter::tempoLine(known->passage.music, control_.standing().tempo);
}

QString DrillText::halfTempo() const { return Formatter::tempo(control_.halfTempo()); }

QString DrillText::streak() const {
    const PassageRecord* known = control_.record();
    const int needed = known == nullptr ? 0 : known->passage.tempi.rule.cleanRuns;
    return Formatter::streak(control_.standing().streak, needed);
}

QString DrillText::opening() const {
    const PassageRecord* known = control_.record();
    if (known == nullptr || control_.state() != practice::DrillControl::State::stopped) return {};
    if (control_.tempoByHand()) return qtTrId("drill.by-hand");
    if (!control_.opening()) return {};
    return qtTrId("drill.new-day").arg(Formatter::tempo(known->standing.tempo));
}

QString DrillText::search() const {
    const auto latest = control_.search();
    if (!latest) return {};
    const QString named = Formatter::tempo(latest->named);
    if (latest->found) return qtTrId("drill.found").arg(Formatter::tempo(*latest->found), named);
    return latest->over ? QString() : qtTrId("drill.finding").arg(named);
}

QString DrillText::sitting() const {
    const bool stopped = control_.state() == practice::DrillControl::State::stopped;
    return stopped ? sittingWords(control_.sitting()) : QString();
}

QString DrillText::takenBack() const {
    const practice::TakenBack* const taken = control_.takenBack();
    const bool stopped = control_.state() == practice::DrillControl::State::stopped;
    return taken == nullptr || !stopped ? QString() : takenBackWords(*taken);
}

QString DrillText::apart() const { return apartLine(control_.kind()); }

QString DrillText::feedback() const {
    using Feedback = practice::DrillControl::Feedback;
    switch (control_.feedback()) {
    case Feedback::none:
        return {};
    case Feedback::clean:
        return qtTrId("drill.verdict.clean");
    case Feedback::climbed:
        return qtTrId("drill.verdict.clean-up").arg(tempo());
    case Feedback::secure:
        return qtTrId("drill.verdict.secure").arg(target());
    case Feedback::missed:
        return qtTrId("drill.verdict.missed");
    case Feedback::found:
        return qtTrId("drill.verdict.found").arg(tempo());
    case Feedback::takenBack:
        return qtTrId("drill.verdict.taken-back");
    case Feedback::nothingToTakeBack:
        return qtTrId("drill.verdict.nothing");
    case Feedback::putBack:
        return qtTrId("drill.verdict.put-back");
    }
    return {};
}

} // namespace piolo::models
