// SPDX-License-Identifier: GPL-3.0-or-later
// What was done today with one passage: figures only, no forecasts.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "practice/figures/passage_figures.h"

namespace piolo::models {

/// Window thread.
class TodayFigures : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    /// "11 of 14"; "none yet" before the first run.
    Q_PROPERTY(QString cleanText READ cleanText NOTIFY changed)
    /// The best tempo ever with a full streak; or "none yet".
    Q_PROPERTY(QString bestText READ bestText NOTIFY changed)
    Q_PROPERTY(QString timeText READ timeText NOTIFY changed)
    /// "on 1 of 3 days", or "yes, on 3 days".
    Q_PROPERTY(QString secureText READ secureText NOTIFY changed)
public:
    using QObject::QObject;

    [[nodiscard]] QString cleanText() const { return cleanText_; }
    [[nodiscard]] QString bestText() const { return bestText_; }
    [[nodiscard]] QString timeText() const { return timeText_; }
    [[nodiscard]] QString secureText() const { return secureText_; }

    void show(const practice::PassageFigures& figures);

signals:
    void changed();

private:
    QString cleanText_, bestText_, timeText_, secureText_;
};

} // namespace piolo::models
