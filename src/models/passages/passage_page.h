// SPDX-License-Identifier: GPL-3.0-or-later
// What one passage is, and what comes next for it, in words and figures.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "models/drill/curve_source.h"
#include "models/drill/stage_figures.h"
#include "models/passages/passage_row.h"
#include "models/staff/staff_view.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. Follows the book while it is shown.
class PassagePage : public piolo::models::CurveSource { // in full, for QML
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// Its id; "" if no passage is shown.
    Q_PROPERTY(QString passage READ passage NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    /// "80"
    Q_PROPERTY(QString tempo READ tempo NOTIFY changed)
    Q_PROPERTY(QString target READ target NOTIFY changed)
    /// "♩ = 80 · sixteenths"
    Q_PROPERTY(QString tempoLine READ tempoLine NOTIFY changed)
    /// "secure on 3 days", "played today", "not played yet"
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    /// "Three more clean in a row, then 82."
    Q_PROPERTY(QString next READ next NOTIFY changed)
    Q_PROPERTY(int streak READ streak NOTIFY changed)
    Q_PROPERTY(int cleanRuns READ cleanRuns NOTIFY changed)
    Q_PROPERTY(QString streakText READ streakText NOTIFY changed)
    Q_PROPERTY(bool secure READ isSecure NOTIFY changed)
    Q_PROPERTY(bool removed READ isRemoved NOTIFY changed)
    /// It was ever played, so that there is a curve.
    Q_PROPERTY(bool played READ wasPlayed NOTIFY changed)
    /// The id of its piece; "" for a separate exercise.
    Q_PROPERTY(QString piece READ piece NOTIFY changed)
    /// The player's own words about the piece; "" if there are none.
    Q_PROPERTY(QString notes READ notes NOTIFY changed)
    /// Where it breaks; see missesMap(). Empty without misses.
    Q_PROPERTY(QVariantMap breaks READ breaks NOTIFY changed)
    Q_PROPERTY(piolo::models::StageFigures* stages READ stages CONSTANT)
    /// Its notes, if they are known.
    Q_PROPERTY(piolo::models::StaffView* staff READ staff CONSTANT)
public:
    /// `book` must outlive this object.
    explicit PassagePage(const practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] QString passage() const;
    [[nodiscard]] QString title() const { return row_.title; }
    [[nodiscard]] QString about() const { return about_; }
    [[nodiscard]] QString tempo() const { return row_.tempo; }
    [[nodiscard]] QString target() const { return row_.target; }
    [[nodiscard]] QString tempoLine() const { return tempoLine_; }
    [[nodiscard]] QString standing() const { return row_.standing; }
    [[nodiscard]] QString next() const { return next_; }
    [[nodiscard]] int streak() const { return row_.streak; }
    [[nodiscard]] int cleanRuns() const { return row_.cleanRuns; }
    [[nodiscard]] QString streakText() const;
    [[nodiscard]] bool isSecure() const { return row_.secure; }
    [[nodiscard]] bool isRemoved() const { return row_.removed; }
    [[nodiscard]] bool wasPlayed() const { return row_.lastDay.has_value(); }
    [[nodiscard]] QString piece() const;
    [[nodiscard]] QString notes() const { return notes_; }
    [[nodiscard]] QVariantMap breaks() const { return breaks_; }
    [[nodiscard]] StageFigures* stages() { return &stages_; }
    [[nodiscard]] StaffView* staff() { return &staff_; }
    [[nodiscard]] const PassageRecord* record() const override;
    [[nodiscard]] Date date() const override;

    /// Shows that passage (id of 32 digits); nothing if it is unknown.
    void show(const QString& passage);
    /// While it is not shown, runs that are recorded cost nothing here.
    void setShown(bool shown);

signals:
    void changed();

private:
    void read();
    void readBreaks(const PassageRecord& record);

    const practice::PracticeBook& book_;
    bool shown_ = false;
    Id id_;
    PassageRow row_;
    QString about_, tempoLine_, next_, notes_;
    QVariantMap breaks_;
    StageFigures stages_;
    StaffView staff_;
};

} // namespace piolo::models
