// SPDX-License-Identifier: GPL-3.0-or-later
// What the passage in the form means in time and in clean runs, in words.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "practice/figures/run_outlook.h"

namespace piolo::models {

/// Window thread.
class RunOutlookText : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the form")
    /// "The tempo settles where about 92% of runs are clean."
    Q_PROPERTY(QString settleSentence READ settleSentence NOTIFY changed)
    /// The seconds of a run, the runs to the next climb, and the time to the target, in one line.
    Q_PROPERTY(QString timeSentence READ timeSentence NOTIFY changed)
    /// The suggestion for a long run, or "".
    Q_PROPERTY(QString proposal READ proposal NOTIFY changed)
    /// The smaller number of clean runs that the suggestion would set, or 0.
    Q_PROPERTY(int proposedCleanRuns READ proposedCleanRuns NOTIFY changed)
public:
    using QObject::QObject;

    [[nodiscard]] QString settleSentence() const;
    [[nodiscard]] QString timeSentence() const;
    [[nodiscard]] QString proposal() const;
    [[nodiscard]] int proposedCleanRuns() const { return outlook_.fewerCleanRuns(); }

    void show(const practice::RunOutlook& outlook, Tempo tempo);

signals:
    void changed();

private:
    practice::RunOutlook outlook_;
    Tempo tempo_ = Tempo::bpm(60); ///< the current tempo of the passage
};

} // namespace piolo::models
