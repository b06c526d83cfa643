// SPDX-License-Identifier: GPL-3.0-or-later
// The bar as the screen shows it: its beats and subdivisions, and which of them sounds now.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/passage/passage.h"
#include "engine/queue/event.h"

namespace piolo::models {

/// Window thread.
class BeatView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    Q_PROPERTY(int beats READ beats NOTIFY barChanged)
    Q_PROPERTY(int parts READ parts NOTIFY barChanged)
    /// The beat that sounds, counted from 0; -1 if none.
    Q_PROPERTY(int beat READ beat NOTIFY sounded)
    /// The pulse inside that beat, counted from 0.
    Q_PROPERTY(int part READ part NOTIFY sounded)
    Q_PROPERTY(bool counting READ counting NOTIFY sounded)
    /// The bar's own number in the part; -1 outside a run. A pick-up is the bar before the first.
    Q_PROPERTY(int barNumber READ barNumber NOTIFY sounded)
    /// The same as text; empty outside a run.
    Q_PROPERTY(QString barText READ barText NOTIFY sounded)
    /// "bar 2 of 4", "bar 43 · 3 of 4", "pick-up", "count-in", "breathe".
    Q_PROPERTY(QString placeText READ placeText NOTIFY sounded)
public:
    using QObject::QObject;

    [[nodiscard]] int beats() const { return music_.meter.beatsPerBar(); }
    /// The pulses of a beat, as many as the click has.
    [[nodiscard]] int parts() const;
    [[nodiscard]] int beat() const { return beat_; }
    [[nodiscard]] int part() const { return part_; }
    [[nodiscard]] bool counting() const { return phase_ == engine::Phase::countIn; }
    [[nodiscard]] int barNumber() const;
    [[nodiscard]] QString barText() const;
    [[nodiscard]] QString placeText() const;
    /// True if a group begins at that beat.
    Q_INVOKABLE [[nodiscard]] bool groupStarts(int beat) const;

    /// Shows another passage.
    void show(const Music& music, const ClickPattern& click);
    /// A pulse is audible.
    void sound(const engine::Event& pulse);
    /// Between two runs: no pulse.
    void breathe();
    /// Nothing sounds.
    void rest();

signals:
    void barChanged();
    void sounded();

private:
    [[nodiscard]] QString barPlace() const;
    void fallSilent(engine::Phase phase);

    Music music_;
    ClickPattern click_;
    engine::Phase phase_ = engine::Phase::idle;
    int bar_ = engine::noBar;
    int beat_ = -1;
    int part_ = 0;
};

} // namespace piolo::models
