// SPDX-License-Identifier: GPL-3.0-or-later
// The list of passages: searched, sorted, and told where each stands.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "models/passages/passage_row.h"

#include <vector>

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window's thread. Follows the book by itself.
class PassageListModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// Rows shown.
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    /// Passages that are not removed, whatever is shown; scales are not counted, and shown only when they are
    /// searched for.
    Q_PROPERTY(int total READ total NOTIFY countChanged)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY searchChanged)
    /// "due", "notPlayed" or "farFromTarget"; other words are not taken.
    Q_PROPERTY(QString sorting READ sorting WRITE setSorting NOTIFY sortingChanged)
    /// Removed passages are shown too.
    Q_PROPERTY(bool removedToo READ removedToo WRITE setRemovedToo NOTIFY removedTooChanged)
    /// Title of the passage removed last and not taken back since, "" when there is none.
    Q_PROPERTY(QString lastRemoved READ lastRemoved NOTIFY lastRemovedChanged)
public:
    enum Role {
        PassageId = Qt::UserRole,
        Title,
        Section, ///< id of the piece, "own", or "" when the order does not go by piece
        PieceName,
        Bars,
        TempoText,
        TargetText,
        SubdivisionText,
        StandingText,
        Share,
        Streak,
        CleanRuns,
        Secure,
        Removed,
        Due,    ///< "12 May", or "" without a date
        Spoken, ///< the whole row as a sentence
    };
    Q_ENUM(Role)

    explicit PassageListModel(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] int total() const { return total_; }
    [[nodiscard]] QString search() const { return search_; }
    void setSearch(const QString& search);
    [[nodiscard]] QString sorting() const;
    void setSorting(const QString& sorting);
    [[nodiscard]] bool removedToo() const { return removedToo_; }
    void setRemovedToo(bool too);
    [[nodiscard]] QString lastRemoved() const;

    /// The row of a passage, -1 when it is not shown.
    Q_INVOKABLE [[nodiscard]] int rowOf(const QString& id) const;
    /// The id in that row, "" outside.
    Q_INVOKABLE [[nodiscard]] QString idAt(int row) const;
    /// Heading of a section: the piece's name.
    Q_INVOKABLE [[nodiscard]] QString sectionTitle(const QString& section) const;
    /// "12 May · in 23 days", or "".
    Q_INVOKABLE [[nodiscard]] QString sectionDue(const QString& section) const;

    /// Records a removal; unknown ids do nothing.
    Q_INVOKABLE void remove(const QString& id);
    /// Takes a removal back.
    Q_INVOKABLE void restore(const QString& id);
    /// Takes the last removal back.
    Q_INVOKABLE void restoreLast();

signals:
    void countChanged();
    void searchChanged();
    void sortingChanged();
    void removedTooChanged();
    void lastRemovedChanged();

private:
    [[nodiscard]] std::vector<PassageRow> wantedRows();
    void refresh();
    void setRemoved(const QString& id, bool removed);
    [[nodiscard]] QString sectionOf(const PassageRow& row) const;
    [[nodiscard]] QString spoken(const PassageRow& row) const;
    [[nodiscard]] QString dueText(const PassageRow& row) const;
    [[nodiscard]] const PassageRow* inSection(const QString& section) const;

    practice::PracticeBook& book_;
    std::vector<PassageRow> rows_;
    int total_ = 0;
    QString search_;
    PassageOrder order_ = PassageOrder::due;
    bool removedToo_ = false;
    Id lastRemoved_;
};

} // namespace piolo::models
