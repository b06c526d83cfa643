// SPDX-License-Identifier: GPL-3.0-or-later
// The list of passages: searched, sorted, with the standing of each.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "models/passages/passage_rows.h"
#include "models/passages/row_changes.h"
#include "practice/drill/next_passage.h"

#include <vector>

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. Follows the book automatically.
class PassageListModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// The number of rows shown.
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    /// The number of passages that are not removed, whatever is shown; scales are not counted, and are shown
    /// only in searches.
    Q_PROPERTY(int total READ total NOTIFY countChanged)
    /// Goes up whenever rows or headings may have changed.
    Q_PROPERTY(int changes READ changes NOTIFY countChanged)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY searchChanged)
    /// "due", "notPlayed" or "farFromTarget"; other values are ignored.
    Q_PROPERTY(QString sorting READ sorting WRITE setSorting NOTIFY sortingChanged)
    /// True if removed passages are shown, too.
    Q_PROPERTY(bool removedToo READ removedToo WRITE setRemovedToo NOTIFY removedTooChanged)
public:
    enum Role {
        PassageId = Qt::UserRole,
        Title,
        Section, ///< id of the piece, "own", or "" if not sorted by piece
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
    [[nodiscard]] int changes() const { return changes_; }
    [[nodiscard]] QString search() const { return selection_.search; }
    void setSearch(const QString& search);
    [[nodiscard]] QString sorting() const;
    void setSorting(const QString& sorting);
    [[nodiscard]] bool removedToo() const { return selection_.removedToo; }
    void setRemovedToo(bool too);

    /// The row of a passage; -1 if it is not shown.
    Q_INVOKABLE [[nodiscard]] int rowOf(const QString& id) const;
    /// The id in that row; "" if out of range.
    Q_INVOKABLE [[nodiscard]] QString idAt(int row) const;
    /// All rows, in order.
    [[nodiscard]] std::vector<practice::ListedPassage> listed() const;
    /// The heading of a section: the piece's name.
    Q_INVOKABLE [[nodiscard]] QString sectionTitle(const QString& section) const;
    /// "12 May · in 23 days", or "".
    Q_INVOKABLE [[nodiscard]] QString sectionDue(const QString& section) const;

    /// Records a removal; ignores unknown ids.
    Q_INVOKABLE void remove(const QString& id);
    /// Undoes a removal.
    Q_INVOKABLE void restore(const QString& id);

signals:
    void countChanged();
    void searchChanged();
    void sortingChanged();
    void removedTooChanged();

private:
    [[nodiscard]] std::vector<PassageRow> wantedRows();
    void refresh();
    void apply(const RowChanges& changes, std::vector<PassageRow>& wanted);
    [[nodiscard]] const PassageRow* inSection(const QString& section) const;

    practice::PracticeBook& book_;
    RowSelection selection_;
    std::vector<PassageRow> rows_;
    int total_ = 0;
    int changes_ = 0;
};

} // namespace piolo::models
