// SPDX-License-Identifier: GPL-3.0-or-later
// Level and mute of each layer of the click, and of the whole.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "engine/click/mix.h"
#include "journal/settings/machine_settings.h"

namespace piolo::models {

/// Window's thread. A row for the whole, then one for each layer. Levels are shares of full, 0…1: no loudness
/// is known here.
class MixModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the settings")
public:
    enum Role { Words = Qt::UserRole, Level, LevelText, Muted, CanMute };
    Q_ENUM(Role)

    /// Reads and writes `machine`, which outlives the model.
    explicit MixModel(journal::MachineSettings& machine, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    /// What the engine is to sound.
    [[nodiscard]] engine::Mix mix() const;

    /// Sets a row's level, clamped into 0…1.
    Q_INVOKABLE void setLevel(int row, double level);
    /// Mutes or unmutes a layer; its level stays for later.
    Q_INVOKABLE void setMuted(int row, bool muted);

signals:
    void changed();

private:
    [[nodiscard]] double level(int row) const;
    [[nodiscard]] bool muted(int row) const;

    journal::MachineSettings& machine_;
};

} // namespace piolo::models
