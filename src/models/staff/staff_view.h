// SPDX-License-Identifier: GPL-3.0-or-later
// Music with known notes, as the screens query it.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/music/staff_music.h"

#include <optional>

namespace piolo::models {

/// Window thread.
class StaffView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to what has the music")
    /// True if there is music to draw.
    Q_PROPERTY(bool known READ known NOTIFY changed)
    /// What the staff shows, in words: bars, notes, range, signature, clef.
    Q_PROPERTY(QString words READ words NOTIFY changed)
public:
    using QObject::QObject;

    [[nodiscard]] bool known() const { return music_.has_value(); }
    [[nodiscard]] QString words() const;
    /// Only if known.
    [[nodiscard]] const StaffMusic& music() const { return *music_; }

    void show(std::optional<StaffMusic> music);
    /// The note that sounds at a pulse, as an index into the music; -1 if none. `bar` is the part's own
    /// number; `part` is one of `parts` pulses of that beat.
    Q_INVOKABLE [[nodiscard]] int noteAt(int bar, int beat, int part, int parts) const;

signals:
    void changed();

private:
    std::optional<StaffMusic> music_;
};

} // namespace piolo::models
