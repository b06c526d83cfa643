// SPDX-License-Identifier: GPL-3.0-or-later
// The stage of a passage, and the log's evidence for the next one.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "practice/figures/passage_figures.h"

namespace piolo::models {

/// "without the click"
[[nodiscard]] QString stageName(Stage stage);

/// Window thread. The player decides: nothing here changes the stage by itself.
class StageFigures : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    /// All stages in order.
    Q_PROPERTY(QStringList names READ names CONSTANT)
    /// The index of the current stage in `names`.
    Q_PROPERTY(int stage READ stage NOTIFY changed)
    /// "Secure at the target on 2 of 3 days."
    Q_PROPERTY(QString evidence READ evidence NOTIFY changed)
    /// The next stage once the log supports it; "" before that, and in the last stage.
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
