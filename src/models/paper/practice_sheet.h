// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet of ladders to print and tick in pencil.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "models/passages/passage_picks.h"
#include "plots/paper/paper_ladder.h"

namespace piolo::models {

/// Window's thread. Of the passages that have a tick.
class PracticeSheet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// "a4" or "letter"; other words are not taken.
    Q_PROPERTY(QString paper READ paper WRITE setPaper NOTIFY changed)
    /// "2 passages on 1 page"; why there is none, when there is none.
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
public:
    PracticeSheet(practice::PracticeBook& book, PassagePicks& picks, QObject* parent = nullptr);

    [[nodiscard]] QString paper() const;
    void setPaper(const QString& paper);
    [[nodiscard]] QString summary() const;
    [[nodiscard]] bool ready() const;

    /// Writes a .pdf, .svg or .png, by the name's end; "~/" is the home folder. "" when it is there, else one
    /// plain sentence.
    Q_INVOKABLE [[nodiscard]] QString save(const QString& path) const;

signals:
    void changed();

private:
    practice::PracticeBook& book_;
    PassagePicks& picks_;
    plots::PaperSize paper_ = plots::PaperSize::a4;
};

} // namespace piolo::models
