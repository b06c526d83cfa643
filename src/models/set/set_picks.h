// SPDX-License-Identifier: GPL-3.0-or-later
// All passages with a tick box each: which of them are taken in turn, in the order of ticking.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "models/passages/pick_rows.h"
#include "practice/log/practice_book.h"

#include <vector>

namespace piolo::models {

/// Window thread. A passage that is removed is no longer offered and loses its tick.
class SetPicks : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the set")
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(int picked READ picked NOTIFY changed)
    /// The last tick was one too many, and was not made.
    Q_PROPERTY(bool refused READ refused NOTIFY changed)
public:
    enum Role { TitleRole = Qt::UserRole + 1, PieceRole, PlaceRole };

    explicit SetPicks(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    /// PlaceRole: counted from 1; 0 without a tick.
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] int picked() const { return static_cast<int>(order_.size()); }
    [[nodiscard]] bool refused() const { return refused_; }
    /// The ticked passages, in the order of ticking.
    [[nodiscard]] const std::vector<Id>& ids() const { return order_; }

    /// False if there are as many as a set can have.
    Q_INVOKABLE bool pick(int row, bool on);

signals:
    void changed();

private:
    void refresh();
    [[nodiscard]] int placeOf(Id passage) const;

    practice::PracticeBook& book_;
    std::vector<PickRow> rows_;
    std::vector<Id> order_;
    bool refused_ = false;
};

} // namespace piolo::models
