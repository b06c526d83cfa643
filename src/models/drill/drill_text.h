// SPDX-License-Identifier: GPL-3.0-or-later
// What the drill screen says in words and figures.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "practice/drill/drill_control.h"

namespace piolo::models {

/// Window thread.
class DrillText : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    Q_PROPERTY(QString title READ title NOTIFY passageChanged)
    /// "4/4 · one-bar count-in · a miss drops 4, five clean in a row climb 2"
    Q_PROPERTY(QString about READ about NOTIFY passageChanged)
    Q_PROPERTY(QString target READ target NOTIFY passageChanged)
    Q_PROPERTY(QString tempo READ tempo NOTIFY standingChanged)
    /// "♩ = 84 · sixteenths"
    Q_PROPERTY(QString tempoLine READ tempoLine NOTIFY standingChanged)
    Q_PROPERTY(QString halfTempo READ halfTempo NOTIFY standingChanged)
    Q_PROPERTY(QString streak READ streak NOTIFY standingChanged)
    /// Why the tempo is not where the last run left it; otherwise "".
    Q_PROPERTY(QString opening READ opening NOTIFY reasonChanged)
    /// "Finding your tempo, from 92 down.", "Found today: 84, from 92 down."; "" if there was no search
    /// today.
    Q_PROPERTY(QString search READ search NOTIFY reasonChanged)
    /// "3 runs: 2 clean, 1 missed in bar 42" after a stop; "" if nothing counted since the start.
    Q_PROPERTY(QString sitting READ sitting NOTIFY reasonChanged)
    /// "Taken back: clean run at 92", while stopped; "" if nothing was since the last start. See
    /// DrillModel::putBack().
    Q_PROPERTY(QString takenBack READ takenBack NOTIFY takenBackChanged)
    /// "a try: changes nothing"; "" for runs that affect the rule.
    Q_PROPERTY(QString apart READ apart NOTIFY reasonChanged)
    Q_PROPERTY(QString feedback READ feedback NOTIFY feedbackChanged)
public:
    /// Both must outlive this object.
    DrillText(const practice::PracticeBook& book, const practice::DrillControl& control,
              QObject* parent = nullptr);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString target() const;
    [[nodiscard]] QString tempo() const;
    [[nodiscard]] QString tempoLine() const;
    [[nodiscard]] QString halfTempo() const;
    [[nodiscard]] QString streak() const;
    [[nodiscard]] QString opening() const;
    [[nodiscard]] QString search() const;
    [[nodiscard]] QString sitting() const;
    [[nodiscard]] QString takenBack() const;
    [[nodiscard]] QString apart() const;
    [[nodiscard]] QString feedback() const;

signals:
    void passageChanged();
    void standingChanged();
    void reasonChanged();
    void takenBackChanged();
    void feedbackChanged();

private:
    void reword();

    const practice::PracticeBook& book_;
    const practice::DrillControl& control_;
};

} // namespace piolo::models
