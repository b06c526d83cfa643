// SPDX-License-Identifier: GPL-3.0-or-later
// The rungs of the ladder, lowest first.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/history/notebook.h"

#include <optional>
#include <vector>

namespace piolo::models {

/// Window thread.
class LadderModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    Q_PROPERTY(int count READ count NOTIFY climbed)
    /// The row of the current rung; -1 without a passage.
    Q_PROPERTY(int presentRow READ presentRow NOTIFY climbed)
public:
    enum Role { tempoRole = Qt::UserRole + 1, presentRole, targetRole, bestRole, startRole };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return static_cast<int>(rungs_.size()); }
    [[nodiscard]] int presentRow() const;

    /// Shows the ladder of these tempi through `present`. Unchanged rungs keep their rows.
    void show(const Tempi& tempi, Tempo present, std::optional<Tempo> best);

signals:
    void climbed();

private:
    [[nodiscard]] std::vector<Tempo> wanted(std::optional<Tempo> best) const;

    Tempi tempi_;
    Tempo present_ = Tempo::bpm(60);
    std::optional<Tempo> best_;
    std::vector<Tempo> rungs_;
};

} // namespace piolo::models
