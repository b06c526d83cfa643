// SPDX-License-Identifier: GPL-3.0-or-later
// Practice that is dated in the future, because a clock was wrong, and its right dates.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/history/wrong_clocks.h"

#include <optional>

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. Shows one device's dates at a time; once they are put right, the next one's.
class LogDates : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the log")
    /// "3 entries are dated in the future, up to 1 March 2126. …"; "" if none is.
    Q_PROPERTY(QString text READ text NOTIFY changed)
    /// When the last of them was played, as typed; today at first.
    Q_PROPERTY(QString day READ day WRITE setDay NOTIFY changed)
    /// One line if it is not a day that can be meant.
    Q_PROPERTY(QString dayFault READ dayFault NOTIFY changed)
    /// "Dates corrected: 3 entries"; "" if none were since the log was opened.
    Q_PROPERTY(QString doneText READ doneText NOTIFY changed)
public:
    explicit LogDates(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] QString text() const;
    [[nodiscard]] QString day() const { return day_; }
    void setDay(const QString& day);
    [[nodiscard]] QString dayFault() const;
    [[nodiscard]] QString doneText() const;

    /// Looks for such practice again.
    void read();
    /// The log is closed: what was corrected stays so.
    void forget();
    /// Records that the clock was wrong by the days between the last date and the one typed.
    Q_INVOKABLE void putRight();
    /// Records that the dates last corrected are those recorded.
    Q_INVOKABLE void undo();

signals:
    void changed();

private:
    void say(const DatedAhead& dates, std::int64_t days);

    practice::PracticeBook& book_;
    std::optional<DatedAhead> ahead_;
    std::optional<DatedAhead> corrected_;
    QString day_;
};

} // namespace piolo::models
