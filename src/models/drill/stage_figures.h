// SPDX-License-Identifier: GPL-3.0-or-later
// The stage a passage is in, and what the practice log says for the next one.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "practice/figures/passage_figures.h"

namespace piolo::models {

/// "without the click"
[[nodiscard]] QString stageName(Stage stage);

/// Window's thread. The player decides: nothing here moves a passage by itself.
class StageFigures : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    /// All stages, in the order in which a passage goes through them.
    Q_PROPERTY(QStringList names READ names CONSTANT)
    /// The place of the present stage in `names`.
    Q_PROPERTY(int stage READ stage NOTIFY changed)
    /// "Secure on 2 of 3 days; then without the click."
    Q_PROPERTY(QString evidence READ evidence NOTIFY changed)
    /// The next stage, once the log speaks for it; "" before, and in the last one.
    Q_PROPERTY(QString proposed READ proposed NOTIFY changed)
public:
    using QObject::QObject;

    [[nodiscard]] static QStringList names();
    [[nodiscard]] int stage() const { return static_cast<int>(stage_); }
    [[nodiscard]] QString evidence() const { return evidence_; }
    [[nodiscard]] QString proposed() const { return proposed_; }

    void show(const practice::PassageFigures& figures);

signals:
    void changed();

private:
    Stage stage_ = Stage::slow;
    QString evidence_, proposed_;
};

} // namespace piolo::models
