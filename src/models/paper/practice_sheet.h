// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet of ladders to print and tick in pencil.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "models/passages/passage_picks.h"
#include "plots/paper/paper_ladder.h"

namespace piolo::models {

/// Window thread. For the ticked passages.
class PracticeSheet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// "a4" or "letter"; other values are ignored.
    Q_PROPERTY(QString paper READ paper WRITE setPaper NOTIFY changed)
    /// "2 passages on one page", or why there is no sheet.
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
public:
    PracticeSheet(practice::PracticeBook& book, PassagePicks& picks, QObject* parent = nullptr);

    [[nodiscard]] QString paper() const;
    void setPaper(const QString& paper);
    [[nodiscard]] QString summary() const;
    [[nodiscard]] bool ready() const;

    /// Writes a .pdf, .svg or .png, depending on the file name; "~/" is the home folder. Returns "" on
    /// success, otherwise one sentence.
    Q_INVOKABLE [[nodiscard]] QString save(const QString& path) const;

signals:
    void changed();

private:
    practice::PracticeBook& book_;
    PassagePicks& picks_;
    plots::PaperSize paper_ = plots::PaperSize::a4;
};

} // namespace piolo::models
