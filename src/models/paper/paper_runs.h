// SPDX-License-Identifier: GPL-3.0-or-later
// Entering a sheet that was ticked on paper, rung by rung, with a review before it is saved.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/history/paper_runs.h"
#include "practice/log/practice_book.h"

#include <optional>
#include <vector>

namespace piolo::models {

/// Window thread. The rows are the rungs of the sheet, lowest first.
class PaperRuns : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    /// Circles per rung.
    Q_PROPERTY(int circles READ circles NOTIFY changed)
    /// As typed: the sheet's lowest tempo, and the day on which it was played.
    Q_PROPERTY(QString lowest READ lowest WRITE setLowest NOTIFY changed)
    Q_PROPERTY(QString day READ day WRITE setDay NOTIFY changed)
    /// One line each; "" if it is valid.
    Q_PROPERTY(QString lowestFault READ lowestFault NOTIFY changed)
    Q_PROPERTY(QString dayFault READ dayFault NOTIFY changed)
    /// "12 clean, 3 missed"; "" if nothing is entered.
    Q_PROPERTY(QString counted READ counted NOTIFY changed)
    /// The outcome: a list of {label, value}.
    Q_PROPERTY(QVariantList outcome READ outcome NOTIFY changed)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed)
    /// "15 runs were added to the log." after keep(), until something is entered again; otherwise "".
    Q_PROPERTY(QString kept READ kept NOTIFY changed)
public:
    enum Role { TempoRole = Qt::UserRole + 1, TargetRole, CleanRole, MissedRole };
    static constexpr int mostMisses = 99;

    explicit PaperRuns(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] bool isOpen() const { return record() != nullptr; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] int circles() const;
    [[nodiscard]] QString lowest() const { return lowest_; }
    [[nodiscard]] QString day() const { return day_; }
    void setLowest(const QString& lowest);
    void setDay(const QString& day);
    [[nodiscard]] QString lowestFault() const;
    [[nodiscard]] QString dayFault() const;
    [[nodiscard]] QString counted() const;
    [[nodiscard]] QVariantList outcome() const;
    [[nodiscard]] bool canKeep() const;
    [[nodiscard]] QString kept() const;

    /// A new sheet for that passage (id of 32 digits): from its current tempo, played today. Does nothing if
    /// something is already entered for it.
    Q_INVOKABLE void show(const QString& passage);
    /// The number of ticked circles of a rung, 0…circles(), and of its misses, 0…mostMisses; clamped.
    Q_INVOKABLE void setClean(int row, int count);
    Q_INVOKABLE void setMissed(int row, int count);
    /// Records all runs for that day. Does nothing unless canKeep().
    Q_INVOKABLE void keep();
    /// Takes back everything that the last keep() recorded.
    Q_INVOKABLE void takeBack();

signals:
    void changed();

private:
    [[nodiscard]] const PassageRecord* record() const { return book_.notebook().passage(id_); }
    [[nodiscard]] std::optional<Date> date() const;
    [[nodiscard]] std::vector<RunFact> runs() const { return enteredRuns(id_, rungs_); }
    void startAnew();
    void layRungs();
    void follow();

    practice::PracticeBook& book_;
    Id id_;
    QString lowest_, day_;
    std::optional<Rule> rule_; ///< the rule that the rungs belong to
    std::vector<PaperRung> rungs_;
    std::vector<Id> kept_;
};

} // namespace piolo::models
