// SPDX-License-Identifier: GPL-3.0-or-later
// The one line on every screen that says what is wrong.
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

/// Window thread.
class RoomNotice : public QObject {
    Q_OBJECT
public:
    /// All must outlive this object.
    RoomNotice(practice::PracticeBook& book, practice::SoundPort& sound,
               const practice::DrillSession& session, const SettingsModel& settings);
    ~RoomNotice() override;

    /// The most urgent problem; "" if all is well.
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
