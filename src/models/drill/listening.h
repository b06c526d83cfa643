// SPDX-License-Identifier: GPL-3.0-or-later
// Hearing a passage's notes before playing them.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "practice/drill/drill_control.h"

namespace piolo::models {

/// Window thread.
class Listening : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    /// True if the notes are known, so that there is something to hear.
    Q_PROPERTY(bool possible READ possible NOTIFY passageChanged)
    /// They are being played now.
    Q_PROPERTY(bool active READ active NOTIFY activeChanged)
    /// With the click, or with the count-in only.
    Q_PROPERTY(bool withClick READ withClick WRITE setWithClick NOTIFY withClickChanged)
public:
    /// `control` must outlive this object.
    explicit Listening(practice::DrillControl& control, QObject* parent = nullptr);

    [[nodiscard]] bool possible() const { return control_.canHear(); }
    [[nodiscard]] bool active() const { return control_.hearing(); }
    [[nodiscard]] bool withClick() const { return withClick_; }
    void setWithClick(bool withClick);

    /// Plays the notes once at the current tempo, or stops them. Nothing is logged and the standing does not
    /// change.
    Q_INVOKABLE void toggle() { control_.hearFirst(withClick_); }

signals:
    void passageChanged();
    void activeChanged();
    void withClickChanged();

private:
    practice::DrillControl& control_;
    bool withClick_ = true;
};

} // namespace piolo::models
