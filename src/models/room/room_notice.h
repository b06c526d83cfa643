// SPDX-License-Identifier: GPL-3.0-or-later
// The one line that says what is wrong, on every screen.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>

namespace piolo::practice {
class DrillSession;
class PracticeBook;
class SoundPort;
} // namespace piolo::practice

namespace piolo::models {

class SettingsModel;

/// Window's thread.
class RoomNotice : public QObject {
    Q_OBJECT
public:
    /// All outlive this.
    RoomNotice(practice::PracticeBook& book, practice::SoundPort& sound,
               const practice::DrillSession& session, const SettingsModel& settings);
    ~RoomNotice() override;

    /// The most urgent trouble; "" when all is well.
    [[nodiscard]] QString text() const;

signals:
    void changed();

private:
    const practice::PracticeBook& book_;
    practice::SoundPort& sound_;
    const practice::DrillSession& session_;
    const SettingsModel& settings_;
};

} // namespace piolo::models
