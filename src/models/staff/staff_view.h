// SPDX-License-Identifier: GPL-3.0-or-later
// Music whose notes are known, as the screens ask about it.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/music/staff_music.h"

#include <optional>

namespace piolo::models {

/// Window's thread.
class StaffView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to what has the music")
    /// There is music to be drawn.
    Q_PROPERTY(bool known READ known NOTIFY changed)
    /// What the staff shows, in words: bars, notes, range, signature, clef.
    Q_PROPERTY(QString words READ words NOTIFY changed)
public:
    using QObject::QObject;

    [[nodiscard]] bool known() const { return music_.has_value(); }
    [[nodiscard]] QString words() const;
    /// Only when known.
    [[nodiscard]] const StaffMusic& music() const { return *music_; }

    void show(std::optional<StaffMusic> music);
    /// The note that sounds at a pulse, by its place in the music; -1: none. `bar`: the part's own number;
    /// `part` of `parts` pulses of that beat.
    Q_INVOKABLE [[nodiscard]] int noteAt(int bar, int beat, int part, int parts) const;

signals:
    void changed();

private:
    std::optional<StaffMusic> music_;
};

} // namespace piolo::models
