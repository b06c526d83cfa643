// SPDX-License-Identifier: GPL-3.0-or-later
// Just a click, as its screen shows and controls it.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/drill/beat_view.h"
#include "practice/click/click_control.h"

namespace piolo::models {

/// Window thread. Its beats are those that are audible now.
class ClickModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    Q_PROPERTY(bool sounds READ sounds NOTIFY soundsChanged)
    Q_PROPERTY(QString tempo READ tempo NOTIFY changed)
    /// "♩"
    Q_PROPERTY(QString beatSign READ beatSign NOTIFY changed)
    /// "♩ = 84 · sixteenths"
    Q_PROPERTY(QString tempoLine READ tempoLine NOTIFY changed)
    /// "Click ♩ = 84" while it sounds; otherwise "".
    Q_PROPERTY(QString nowText READ nowText NOTIFY changed)
    /// Lists of {value, text}.
    Q_PROPERTY(QVariantList meters READ meters NOTIFY changed)
    Q_PROPERTY(QString meter READ meter WRITE setMeter NOTIFY changed)
    Q_PROPERTY(QVariantList subdivisions READ subdivisions NOTIFY changed)
    Q_PROPERTY(int subdivision READ subdivision WRITE setSubdivision NOTIFY changed)
    Q_PROPERTY(piolo::models::BeatView* beats READ beats CONSTANT)
public:
    /// `control` must outlive this object.
    explicit ClickModel(practice::ClickControl& control, QObject* parent = nullptr);

    [[nodiscard]] bool sounds() const { return control_.sounds(); }
    [[nodiscard]] QString tempo() const;
    [[nodiscard]] QString beatSign() const;
    [[nodiscard]] QString tempoLine() const;
    [[nodiscard]] QString nowText() const;
    [[nodiscard]] QVariantList meters() const;
    [[nodiscard]] QString meter() const;
    void setMeter(const QString& meter);
    [[nodiscard]] QVariantList subdivisions() const;
    [[nodiscard]] int subdivision() const { return control_.subdivision(); }
    void setSubdivision(int pulses) { control_.setSubdivision(pulses); }
    [[nodiscard]] BeatView* beats() { return &beats_; }

    Q_INVOKABLE void toggle() { control_.toggle(); }
    /// By that many beats per minute.
    Q_INVOKABLE void nudge(int by) { control_.nudge(by); }
    /// Where nudge() would lead.
    Q_INVOKABLE [[nodiscard]] QString nudged(int by) const;
    /// A tap at the moment of the press. `stamp`: as for eventMoment().
    Q_INVOKABLE void tapAt(quint64 stamp);
    /// A tempo as typed. False if it is none; the present one stays.
    Q_INVOKABLE bool type(const QString& tempo);

    /// Takes over the tempo, meter and subdivision of a passage, unless the click sounds.
    void takeOver(const Music& music, Tempo tempo);
    /// Shows what has become audible. The model's own timer calls it while the click sounds.
    void tick() { control_.tick(); }

signals:
    void soundsChanged();
    void changed();

private:
    void showState();
    void showSet();

    practice::ClickControl& control_;
    BeatView beats_;
    QTimer timer_;
};

} // namespace piolo::models
