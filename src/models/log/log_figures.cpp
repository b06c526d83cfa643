// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_figures.h"

#include "core/history/practice_days.h"
#include "models/log/log_misses.h"
#include "models/log/log_practice.h"
#include "models/log/log_weeks.h"
#include "models/text/formatter.h"
#include "practice/figures/bar_parts.h"
#include "practice/figures/curve_passages.h"
#include "practice/figures/day_shares.h"
#include "practice/log/passage_saving.h"
#include "practice/log/practice_book.h"
#include "text/one_line.h"

#include <QLocale>

namespace piolo::models {

namespace {

/// As many as can be read at a glance.
constexpr std::size_t mostWorst = 4;

} // namespace

LogFigures::LogFigures(practice::PracticeBook& book, QObject* parent) : QObject(parent), book_(book) {}

void LogFigures::read(const practice::LogFilter& filter) {
    readDays();
    const auto worst = practice::worstPassages(book_.notebook(), filter.piece, book_.today(), mostWorst);
    worst_ = worstMaps(book_.notebook(), worst);
    const bool chosen = !filter.passage.isNone();
    readBreaks(filter, chosen || worst.empty() ? Id{} : worst.front().passage);
    emit changed();
}

void LogFigures::readDays() {
    const Date today = book_.today();
    const Date from = Date::fromDaysSince1970(today.daysSince1970() - practice::practiceDaysShown + 1);
    const auto days = practiceDays(book_.notebook(), from, today);
    const auto gaps = missedDays(days, today);
    days_ = practiceMaps(days, gaps, today);
    mostMinutes_ = practice::mostMinutes(days);
    gapText_ = gapWords(days, gaps);
    weekText_ = weekWords(practice::weeksOf(days, today, QLocale().firstDayOfWeek()));
}

void LogFigures::readBreaks(const practice::LogFilter& filter, Id worst) {
    const auto passages = practice::curvePassages(book_.notebook(), filter);
    const Id before = passage_;
    passage_ = !worst.isNone() ? worst : passages.empty() ? Id{} : passages.front();
    breaks_ = {};
    stretch_.reset();
    buildUp_.clear();
    parts_.clear();
    if (passage_ != before && !madeText_.isEmpty()) {
        madeText_ = made_ = QString();
        emit madeChanged();
    }
    const PassageRecord* const record = book_.notebook().passage(passage_);
    if (record == nullptr) return;
    const Misses misses = missesByBar(*record, book_.notebook().settings().reactionMillis, filter.from);
    breaks_ = missesMap(*record, misses);
    stretch_ = worstStretch(misses, record->passage.music);
    buildUp_ = practice::partsFromTheEnd(record->passage.music);
    parts_ = practice::partsThatOverlap(record->passage.music);
}

QString LogFigures::stretchText() const {
    if (!stretch_ || book_.readOnly()) return {};
    Music bars;
    bars.firstBar = stretch_->firstBar;
    bars.bars = stretch_->bars;
    return qtTrId("breaks.made-of").arg(Formatter::bars(bars));
}

QString LogFigures::stretchNote() const {
    if (!stretch_) return {};
    return stretch_->bars > 1 ? qtTrId("breaks.reason-run-up") : qtTrId("breaks.reason");
}

QString LogFigures::buildUpText() const {
    return buildUp_.empty() || book_.readOnly() ? QString() : qtTrId("breaks.last-bar-first");
}

QString LogFigures::partsText() const {
    return parts_.empty() || book_.readOnly()
               ? QString()
               : qtTrId("breaks.in-parts").arg(Formatter::countWord(static_cast<int>(parts_.size())));
}

void LogFigures::makeParts() { make(std::vector(parts_)); }

void LogFigures::makeStretch() {
    if (stretch_) make({*stretch_});
}

void LogFigures::buildUp() { make(std::vector(buildUp_)); }

void LogFigures::make(const std::vector<BuildUpPart>& parts) {
    const PassageRecord* const record = book_.notebook().passage(passage_);
    if (record == nullptr || parts.empty() || book_.readOnly()) return;
    const Passage whole = record->passage; // copied, because recording the first fact invalidates the record
    QString first, name;
    for (const BuildUpPart& part : parts) {
        Passage made = passageOfBars(whole, part);
        made.id = book_.newId();
        practice::savePassage(book_, made);
        if (first.isEmpty()) {
            first = QString::fromStdString(made.id.text());
            name = text::nameShown(made.title.name);
        }
    }
    made_ = first;
    madeText_ =
        parts.size() == 1
            ? qtTrId("breaks.made").arg(name)
            : qtTrId("breaks.made-parts").arg(Formatter::passages(static_cast<int>(parts.size())), name);
    emit madeChanged();
}

} // namespace piolo::models
