// SPDX-License-Identifier: GPL-3.0-or-later
// The practice settings: facts of the practice folder, stored in it.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/passage/practice_settings.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. A setting is recorded when it changes. Values out of range are clamped, unknown choices
/// ignored.
class PracticeSettingsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the settings")
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)
    Q_PROPERTY(int gapMillis READ gapMillis WRITE setGapMillis NOTIFY changed)
    Q_PROPERTY(bool playOn READ playOn WRITE setPlayOn NOTIFY changed)
    Q_PROPERTY(int pauseAfterRuns READ pauseAfterRuns WRITE setPauseAfterRuns NOTIFY changed)
    Q_PROPERTY(int secureDays READ secureDays WRITE setSecureDays NOTIFY changed)
    /// From hearing a slip to pressing the key.
    Q_PROPERTY(int reactionMillis READ reactionMillis WRITE setReactionMillis NOTIFY changed)
    Q_PROPERTY(QVariantList dayOpenings READ dayOpenings CONSTANT)
    /// "twoRungsBelow", "asLeft" or "start".
    Q_PROPERTY(QString dayOpening READ dayOpening WRITE setDayOpening NOTIFY changed)
public:
    /// `book` must outlive this object.
    explicit PracticeSettingsModel(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] int gapMillis() const;
    void setGapMillis(int millis);
    [[nodiscard]] bool playOn() const;
    void setPlayOn(bool on);
    [[nodiscard]] int pauseAfterRuns() const;
    void setPauseAfterRuns(int runs);
    [[nodiscard]] int secureDays() const;
    void setSecureDays(int days);
    [[nodiscard]] int reactionMillis() const;
    void setReactionMillis(int millis);
    [[nodiscard]] QVariantList dayOpenings() const;
    [[nodiscard]] QString dayOpening() const;
    void setDayOpening(const QString& opening);

signals:
    void changed();

private:
    template <typename Value>
    void put(Value PracticeSettings::*field, Value value);
    [[nodiscard]] const PracticeSettings& settings() const;

    practice::PracticeBook& book_;
};

} // namespace piolo::models
