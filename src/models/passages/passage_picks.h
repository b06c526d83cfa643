// SPDX-License-Identifier: GPL-3.0-or-later
// Passages with a tick box each: which of them go on paper or into a file. Scales are apart.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "models/passages/pick_rows.h"
#include "practice/log/practice_book.h"

#include <unordered_set>
#include <vector>

namespace piolo::models {

/// Window thread. Removed passages are not offered; a passage that is removed loses its tick.
class PassagePicks : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    Q_PROPERTY(int count READ count NOTIFY changed)
    /// How many scales there are, and whether they are in the list, too, after the passages.
    Q_PROPERTY(int scales READ scales NOTIFY changed)
    Q_PROPERTY(bool withScales READ withScales WRITE setWithScales NOTIFY changed)
    Q_PROPERTY(int picked READ picked NOTIFY changed)
    /// "3 of 7 passages"; with scales, "3 of 7 passages, 0 of 45 scales".
    Q_PROPERTY(QString words READ words NOTIFY changed)
public:
    enum Role { TitleRole = Qt::UserRole + 1, PieceRole, PickedRole };

    explicit PassagePicks(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] int scales() const { return scales_; }
    [[nodiscard]] bool withScales() const { return withScales_; }
    /// Without them, no scale has a tick.
    void setWithScales(bool with);
    [[nodiscard]] int picked() const { return static_cast<int>(picked_.size()); }
    [[nodiscard]] QString words() const;
    /// The ticked passages, in the order of the list.
    [[nodiscard]] std::vector<Id> ids() const;

    Q_INVOKABLE void pick(int row, bool on);
    Q_INVOKABLE void pickAll(bool on);
    /// Ticks only that passage (id of 32 digits); none if there is no such passage. Scales are in the list
    /// only if it is one.
    Q_INVOKABLE void pickOnly(const QString& passage);

signals:
    void changed();

private:
    [[nodiscard]] std::vector<PickRow> rowsNow() const;
    [[nodiscard]] bool isScale(Id id) const;
    void refresh();
    void announce();

    practice::PracticeBook& book_;
    std::vector<PickRow> rows_;
    std::unordered_set<Id> picked_;
    int scales_ = 0;
    bool withScales_ = false;
};

} // namespace piolo::models
