// SPDX-License-Identifier: GPL-3.0-or-later
// Level and mute of each layer of the click, and the overall level.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "engine/click/mix.h"
#include "journal/settings/machine_settings.h"

namespace piolo::models {

/// Window thread. One row for the overall level, then one for each layer. Levels are fractions of full scale,
/// 0…1: the loudness is unknown here.
class MixModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the settings")
public:
    enum Role { Words = Qt::UserRole, Level, LevelText, Muted, CanMute };
    Q_ENUM(Role)

    /// Reads and writes `machine`, which must outlive the model.
    explicit MixModel(journal::MachineSettings& machine, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    /// The overall level.
    [[nodiscard]] double overall() const { return level(0); }
    /// The mix for the engine.
    [[nodiscard]] engine::Mix mix() const;

    /// Sets a row's level, clamped to 0…1.
    Q_INVOKABLE void setLevel(int row, double level);
    /// Mutes or unmutes a layer; its level is kept.
    Q_INVOKABLE void setMuted(int row, bool muted);

signals:
    /// A row's level or mute is not what it was.
    void changed(int row);

private:
    [[nodiscard]] double level(int row) const;
    [[nodiscard]] bool muted(int row) const;

    journal::MachineSettings& machine_;
};

} // namespace piolo::models
