// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's notes, heard before they are played.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "practice/drill/drill_control.h"

namespace piolo::models {

/// Window's thread.
class Listening : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    /// The notes are known: there is something to hear.
    Q_PROPERTY(bool possible READ possible NOTIFY passageChanged)
    /// They are heard now.
    Q_PROPERTY(bool active READ active NOTIFY activeChanged)
    /// With the click, or with the count-in alone.
    Q_PROPERTY(bool withClick READ withClick WRITE setWithClick NOTIFY withClickChanged)
public:
    /// `control` outlives this.
    explicit Listening(practice::DrillControl& control, QObject* parent = nullptr);

    [[nodiscard]] bool possible() const { return control_.canHear(); }
    [[nodiscard]] bool active() const { return control_.hearing(); }
    [[nodiscard]] bool withClick() const { return withClick_; }
    void setWithClick(bool withClick);

    /// Plays the notes once at the present tempo, or stops them: nothing is logged and nothing moves.
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
