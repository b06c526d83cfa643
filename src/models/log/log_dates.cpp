// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/log/log_dates.h"

#include "models/text/formatter.h"
#include "models/text/typed_values.h"
#include "practice/log/practice_book.h"

#include <algorithm>
#include <utility>

namespace piolo::models {

LogDates::LogDates(practice::PracticeBook& book, QObject* parent) : QObject(parent), book_(book) {}

void LogDates::read() {
    auto groups = book_.notebook().datedAfter(latestPlausible(book_.today()));
    auto first = groups.empty() || book_.readOnly() ? std::nullopt : std::optional(std::move(groups.front()));
    if (first == ahead_) return;
    ahead_ = std::move(first);
    day_ = dateForTyping(book_.today());
    emit changed();
}

void LogDates::forget() {
    corrected_.reset();
    emit changed();
}

QString LogDates::text() const {
    if (!ahead_) return {};
    const auto count = static_cast<int>(std::min<std::size_t>(ahead_->count, 1'000'000));
    return qtTrId("log.dates.ahead", count).arg(Formatter::date(ahead_->to, book_.today()));
}

void LogDates::setDay(const QString& day) {
    day_ = day;
    emit changed();
}

QString LogDates::dayFault() const {
    const auto day = readDate(day_);
    if (!day) return qtTrId("paper.enter.fault.day").arg(dateForTyping(book_.today()));
    return *day > book_.today() ? qtTrId("paper.enter.fault.future") : QString();
}

QString LogDates::doneText() const { return corrected_ ? qtTrId("log.dates.done") : QString(); }

void LogDates::putRight() {
    if (!ahead_ || !dayFault().isEmpty()) return;
    corrected_ = ahead_;
    say(*corrected_, readDate(day_)->daysSince1970() - corrected_->to.daysSince1970());
}

void LogDates::undo() {
    if (corrected_) say(*std::exchange(corrected_, std::nullopt), 0);
}

void LogDates::say(const DatedAhead& dates, std::int64_t days) {
    book_.record(ClockFact{dates.device, dates.from, dates.to, dates.until, static_cast<std::int32_t>(days)});
    emit changed();
}

} // namespace piolo::models
