// SPDX-License-Identifier: GPL-3.0-or-later
// Just a click: what keys and buttons do to a click without a passage, and what is audible of it now.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>

#include "core/time/subdivision.h"
#include "core/time/tap_tempo.h"
#include "practice/drill/drill_session.h"
#include "practice/keys/pedal_press.h"
#include "practice/ports/sound_port.h"

#include <cstdint>
#include <deque>

namespace piolo::practice {

/// Window thread. Writes no fact. While it sounds, a change of tempo and subdivision takes effect at the next
/// beat and one of meter at the next bar. Times are nanoseconds of the port's monotonic clock.
class ClickControl : public QObject {
    Q_OBJECT
public:
    /// `sound` and `session` must outlive this object.
    ClickControl(SoundPort& sound, DrillSession& session, QObject* parent = nullptr);

    [[nodiscard]] bool sounds() const { return number_ != 0; }
    [[nodiscard]] Tempo tempo() const { return tempo_; }
    [[nodiscard]] const Meter& meter() const { return meter_; }
    [[nodiscard]] int subdivision() const { return subdivision_; }
    /// How many taps the tempo is taken from; 0 if it was set in another way since.
    [[nodiscard]] std::size_t taps() const { return taps_.taps(); }
    [[nodiscard]] std::int64_t nowNanos() const { return sound_.nowNanos(); }

    void start();
    void stop();
    void toggle() { sounds() ? stop() : start(); }
    /// The single pedal: a press starts, and while it sounds each press is a tap; held, it stops.
    void pedal(const PedalAct& act);

    void setTempo(Tempo tempo);
    /// By that many beats per minute, to a whole number.
    void nudge(int by) { setTempo(nudged(tempo_, by)); }
    /// Where nudge() leads from `tempo`.
    [[nodiscard]] static Tempo nudged(Tempo tempo, int by);
    /// A tap of the beat; from the second on, they are the tempo.
    void tap(std::int64_t nanos);
    void setMeter(const Meter& meter);
    /// 1 to 8 pulses to the beat; others are ignored.
    void setSubdivision(int pulses);

    /// Processes the events that have become audible. Call often while it sounds.
    void tick();

signals:
    /// It is about to sound: whatever else sounds must stop.
    void starting();
    void soundsChanged();
    /// tempo(), meter(), subdivision() or taps() changed.
    void changed();
    /// From here on, the audible bars are those of `plan`.
    void turned(const piolo::engine::ClickPlan& plan);
    /// A pulse is audible.
    void pulsed(const piolo::engine::Event& pulse);
    /// Nothing sounds any more.
    void fellSilent();

private:
    [[nodiscard]] engine::ClickPlan plan() const;
    void change();
    void take(const DrillNote& note);
    void hear(const engine::Event& event);
    void finish();

    SoundPort& sound_;
    DrillSession& session_;
    Tempo tempo_ = Tempo::bpm(72);
    Meter meter_;
    int subdivision_ = 1;
    TapTempo taps_;
    std::uint64_t number_ = 0; // of the click that sounds; 0: none
    bool began_ = false;
    std::deque<engine::Event> coming_; // decided but not audible yet
};

} // namespace piolo::practice
