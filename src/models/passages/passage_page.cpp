// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_page.h"

#include "core/rule/rule.h"
#include "models/log/log_misses.h"
#include "models/text/formatter.h"
#include "models/text/id_text.h"
#include "models/text/passage_about.h"
#include "practice/figures/passage_figures.h"
#include "practice/log/practice_book.h"

namespace piolo::models {

namespace {

/// What the next clean runs lead to: below the target, a climb.
QString nextStep(const PassageRecord& record, const StageFigures& stages) {
    const Rule& rule = record.passage.tempi.rule;
    if (record.standing.tempo >= rule.target) return stages.evidence();
    int runs = 1;
    Outcome outcome = afterClean(record.standing, rule);
    for (; !outcome.climbed && runs < Rule::mostSteps; ++runs) outcome = afterClean(outcome.after, rule);
    return qtTrId("page.next", runs).arg(Formatter::tempo(outcome.after.tempo));
}

} // namespace

PassagePage::PassagePage(const practice::PracticeBook& book, QObject* parent)
    : CurveSource(parent), book_(book) {
    connect(&book_, &practice::PracticeBook::changed, this, [this] {
        if (shown_) read();
    });
    connect(this, &PassagePage::changed, this, &PassagePage::curveChanged);
}

const PassageRecord* PassagePage::record() const { return book_.notebook().passage(id_); }

Date PassagePage::date() const { return book_.today(); }

QString PassagePage::passage() const { return id_.isNone() ? QString() : idText(id_); }

QString PassagePage::piece() const { return row_.piece.isNone() ? QString() : idText(row_.piece); }

QString PassagePage::streakText() const { return Formatter::streak(row_.streak, row_.cleanRuns); }

void PassagePage::show(const QString& passage) {
    id_ = Id::parse(passage.toStdString()).value_or(Id{});
    read();
}

void PassagePage::setShown(bool shown) {
    shown_ = shown;
    if (shown_) read();
}

void PassagePage::read() {
    const PassageRecord* const known = record();
    if (known == nullptr) id_ = {};
    row_ = {};
    about_ = tempoLine_ = next_ = notes_ = QString();
    breaks_ = {};
    staff_.show(known == nullptr ? std::nullopt : std::optional(staffOf(known->passage)));
    if (known != nullptr) {
        const Notebook& notebook = book_.notebook();
        const auto piece = notebook.piece(known->passage.title.piece);
        row_ = rowOf(*known, piece ? &*piece : nullptr, notebook.settings(), book_.today());
        about_ = aboutPassage(notebook, known->passage);
        tempoLine_ = Formatter::tempoLine(known->passage.music, known->standing.tempo);
        notes_ = piece ? QString::fromStdString(piece->notes) : QString();
        stages_.show(practice::figuresOf(notebook, *known, book_.today()));
        next_ = nextStep(*known, stages_);
        readBreaks(*known);
    }
    emit changed();
}

void PassagePage::readBreaks(const PassageRecord& record) {
    const Misses misses = missesByBar(record, book_.notebook().settings().reactionMillis);
    if (misses.placed > 0) breaks_ = missesMap(record, misses);
}

} // namespace piolo::models
