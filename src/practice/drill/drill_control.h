// SPDX-License-Identifier: GPL-3.0-or-later
// The drill of one passage: what keys and buttons do to it, and what is audible of it now.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>

#include "core/rule/tempo_search.h"
#include "core/time/tap_tempo.h"
#include "practice/drill/drill_feedback.h"
#include "practice/drill/drill_session.h"
#include "practice/drill/marks_made.h"
#include "practice/drill/rest_watch.h"
#include "practice/drill/unheard_runs.h"
#include "practice/figures/sitting_figures.h"
#include "practice/keys/pedal_press.h"
#include "practice/log/take_backs.h"
#include "practice/ports/sleep_watch.h"
#include "practice/ports/sound_port.h"

#include <cstdint>
#include <deque>
#include <optional>

namespace piolo::practice {

/// Window thread. Notes arrive when they are decided; the response to a key takes effect at once, everything
/// else when it is audible. Times are nanoseconds of the port's monotonic clock.
class DrillControl : public QObject {
    Q_OBJECT
public:
    enum class State { stopped, playing, paused };
    using Feedback = DrillFeedback;

    /// `book`, `sound` and `session` must outlive this object.
    DrillControl(PracticeBook& book, SoundPort& sound, DrillSession& session, QObject* parent = nullptr);

    /// Switches to that passage; stops whatever runs.
    void open(Id passage);
    [[nodiscard]] Id passage() const { return passage_; }
    /// The record of the passage; null if none is open. Valid until the notebook changes.
    [[nodiscard]] const PassageRecord* record() const;
    /// The passage as it is being played, in its context if there is one; while stopped, the passage itself.
    [[nodiscard]] Passage played() const;
    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] engine::Pause pauseReason() const { return pause_; }
    /// The kind of the runs being played; `run` while stopped.
    [[nodiscard]] RunKind kind() const { return kind_; }
    /// The runs do not change the standing: they are played outside the rule.
    [[nodiscard]] bool apart() const { return kind_ != RunKind::run; }
    /// As far as it is audible; while stopped, where the next run starts.
    [[nodiscard]] const Standing& standing() const { return shown_; }
    /// Set by hand while stopped and not in the journal yet.
    [[nodiscard]] std::optional<Tempo> tempoByHand() const { return hand_; }
    /// Where a new day opens; nothing if the passage was already opened on that day.
    [[nodiscard]] std::optional<Tempo> opening() const;
    [[nodiscard]] std::optional<TempoSearch> search() const;
    [[nodiscard]] Tempo halfTempo() const;
    /// True if the player ends each run.
    [[nodiscard]] bool openEnded() const;
    /// The runs since the last start of this passage.
    [[nodiscard]] SittingFigures sitting() const;
    /// How many runs in a row ended clean without a key press.
    [[nodiscard]] std::size_t unheardRuns() const { return unheard_.count(); }
    [[nodiscard]] Feedback feedback() const { return feedback_; }
    /// It is time to rest ears and lip.
    [[nodiscard]] bool restDue() const;
    /// True if the passage's notes are known, so that they can be heard before playing.
    [[nodiscard]] bool canHear() const;
    /// They are being played now.
    [[nodiscard]] bool hearing() const { return playback_ != 0; }
    /// True if something sounds or may continue: call tick() often.
    [[nodiscard]] bool isBusy() const { return state_ != State::stopped || hearing(); }
    // The keys, with the time at which they were pressed.
    /// Starts the drill; marks a miss while the click runs; continues after a pause.
    void strike(std::int64_t nanos);
    [[nodiscard]] std::int64_t nowNanos() const { return sound_.nowNanos(); }
    /// The single pedal: a press starts, marks a miss or continues; a double press takes back; holding it
    /// stops or, while nothing runs, asks for the next passage.
    void pedal(const PedalAct& act);
    /// True if a press would mark a miss now, which cannot wait until it is clear what kind of press it is.
    [[nodiscard]] bool marksAtOnce() const { return state_ == State::playing; }
    /// The last strike was not a miss: the pedal was held, and the click stops.
    void strikeHeld();
    /// The last strike was not a miss: another press followed, and the mark before them is taken back.
    void strikeTwice();
    /// Marks the run clean if it is open-ended; other runs are clean by default.
    void markClean(std::int64_t nanos);
    /// Starts runs of that kind, only while stopped: those of the rule at the tempo of the standing; a try,
    /// without the click and in context at the target; aside at half the current tempo.
    void begin(RunKind kind);
    /// That passage's turn in a set: while stopped, starts it; in answer to turnOver(), goes on with it.
    void playTurn(Id passage, const engine::Turn& turn);
    /// The player names the current tempo as theirs: each miss lowers it, and the first full streak stops the
    /// click and has found it.
    void seek();
    /// Plays the passage's notes once at the current tempo, or stops them. Nothing is logged and the standing
    /// does not change.
    void hearFirst(bool withClick);
    void stop();
    void takeBack();
    /// Restores what was taken back last since the last start; takenBack() is null if nothing was.
    void putBack();
    [[nodiscard]] const TakenBack* takenBack() const { return takeBacks_.last(); }
    /// One BPM or notch, only while stopped. In a pause that suggests it, slower() halves the tempo.
    void faster();
    void slower();
    /// Any tempo, like faster() and slower(): only while stopped.
    void setTempo(Tempo tempo) { setHand(tempo); }
    /// A tap of the beat; from the second on, they are the tempo, as with setTempo().
    void tap(std::int64_t nanos);
    /// Discards a tempo set by hand, because its beat has changed.
    void forgetHand();
    /// The player chooses the stage of the passage.
    void setStage(Stage stage);
    // During a pause.
    /// The runs without a key press were clean, or the player declines the suggestion.
    void goOn();
    /// The runs without a key press do not count after all.
    void doubt();
    void halveTempo();
    void dismissRest();
    /// Processes the events that have become audible. If the machine was suspended since the start, stops:
    /// the run is void.
    void tick();

signals:
    /// This passage's turn is over, as heard: it stops unless playTurn() is called at once.
    void turnOver();
    /// Another passage is open.
    void opened();
    /// The notebook's record of the passage, or of what it belongs to, has changed.
    void recordChanged();
    /// state(), pauseReason(), kind(), unheardRuns() or hearing() changed.
    void stateChanged();
    /// standing() or tempoByHand() changed.
    void standingChanged();
    void feedbackChanged();
    void restChanged();
    /// From here on, the bars of played() are the ones that sound.
    void barsChanged();
    /// A pulse is audible.
    void pulsed(const piolo::engine::Event& pulse);
    /// Between two runs: no pulse.
    void breathed();
    /// Nothing sounds any more.
    void fellSilent();
    /// Each event, as soon as it is audible.
    void heard(const piolo::engine::Event& event);
    /// The pedal was held while nothing runs.
    void wantsNext();

private:
    // drill_control.cpp: what is open, and its standing
    void noteBook(const QString& passage);
    void show(const Standing& standing);
    void settle();
    void change(Id passage);
    void setHand(std::optional<Tempo> tempo);
    void setFeedback(Feedback feedback);
    [[nodiscard]] Passage played(RunKind kind) const;
    [[nodiscard]] Standing natural() const;
    [[nodiscard]] Standing standingToStart() const;
    [[nodiscard]] Standing standingFor(RunKind kind) const;
    // drill_keys.cpp: what the player does
    void start(RunKind kind, const engine::Turn& turn);
    void write(FactBody body);
    void journalOpening();
    void withdrawn(std::uint64_t press);
    // drill_hearing.cpp: what the engine decides
    void take(const DrillNote& note);
    void answer(const DrillNote& note);
    void answerRunEnded(const DrillNote& note);
    void hear(const engine::Event& event);
    void hearPulse(const engine::Event& event);
    void hearPlayback(const engine::Event& event);
    void hearRunEnded(const engine::Event& event);
    void endPlayback();
    void pause(engine::Pause why);
    void finish();
    void endTurn();

    PracticeBook& book_;
    SoundPort& sound_;
    DrillSession& session_;
    RestWatch rest_;
    TakeBacks takeBacks_;              // since the last start of this passage
    std::deque<engine::Event> coming_; // decided but not audible yet
    Id passage_;
    std::optional<std::size_t> begun_; // the number of entries at the last start of this passage
    State state_ = State::stopped;
    RunKind kind_ = RunKind::run;
    engine::Pause pause_ = engine::Pause::noKey;
    bool stopAsked_ = false;
    std::uint64_t strike_ = 0;    // the number of the last one that marked
    std::uint64_t backAfter_ = 0; // once that strike is withdrawn, take something back
    bool seeking_ = false;        // the first full streak ends it
    std::uint64_t playback_ = 0;  // the number of the current playback; 0: none
    TapTempo taps_;
    std::optional<Tempo> hand_;
    Standing shown_;
    SleepWatch sleep_;
    Feedback feedback_ = Feedback::none;
    std::int64_t feedbackSince_ = 0;
    UnheardRuns unheard_;
    MarksMade marks_; // since the last start, or since the set began
};

} // namespace piolo::practice
