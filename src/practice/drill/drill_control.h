// SPDX-License-Identifier: GPL-3.0-or-later
// The drill of one passage: what keys and buttons do to it, and what can be heard of it now.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>

#include "core/rule/tempo_search.h"
#include "practice/drill/drill_session.h"
#include "practice/drill/rest_watch.h"
#include "practice/keys/pedal_press.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"

#include <cstdint>
#include <deque>
#include <optional>
#include <vector>

namespace piolo::practice {

/// Window's thread. Notes arrive when they are decided; what answers a key takes effect at once, everything
/// else when it can be heard. Moments are nanoseconds of the port's monotonic clock.
class DrillControl : public QObject {
    Q_OBJECT
public:
    enum class State { stopped, playing, paused };
    enum class Feedback { none, clean, climbed, secure, missed, found, takenBack, nothingToTakeBack };

    /// `book`, `sound` and `session` outlive this.
    DrillControl(PracticeBook& book, SoundPort& sound, DrillSession& session, QObject* parent = nullptr);

    /// Turns to that passage; stops what runs.
    void open(Id passage);
    [[nodiscard]] Id passage() const { return passage_; }
    /// What is known of the passage; none when none is open. Good until the notebook changes.
    [[nodiscard]] const PassageRecord* record() const;
    /// The passage as it is played now, with its context if there is one; while stopped as it is.
    [[nodiscard]] Passage played() const;

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] engine::Pause pauseReason() const { return pause_; }
    /// Of the runs that are played; `run` while stopped.
    [[nodiscard]] RunKind kind() const { return kind_; }
    /// The runs move nothing: they are played for something other than the rule.
    [[nodiscard]] bool apart() const { return kind_ != RunKind::run; }
    /// As far as it can be heard; while stopped, where the next run starts.
    [[nodiscard]] const Standing& standing() const { return shown_; }
    /// Set by hand while stopped, not journalled yet.
    [[nodiscard]] std::optional<Tempo> tempoByHand() const { return hand_; }
    /// Where a new day opens; none on a day on which the passage was opened already.
    [[nodiscard]] std::optional<Tempo> opening() const;
    [[nodiscard]] std::optional<TempoSearch> search() const;
    [[nodiscard]] Tempo halfTempo() const;
    /// The player ends each run.
    [[nodiscard]] bool openEnded() const;
    /// How many runs in a row ended clean without a key.
    [[nodiscard]] std::size_t unheardRuns() const { return unheard_.size(); }
    [[nodiscard]] Feedback feedback() const { return feedback_; }
    /// Time to rest ears and lip.
    [[nodiscard]] bool restDue() const;
    /// The passage's notes are known: they can be heard before they are played.
    [[nodiscard]] bool canHear() const;
    /// They are heard now.
    [[nodiscard]] bool hearing() const { return playback_ != 0; }
    /// Something sounds or may go on: call tick() often.
    [[nodiscard]] bool isBusy() const { return state_ != State::stopped || hearing(); }

    // The keys, at the moment they were pressed.
    /// Starts; a miss while the click runs; in a pause goes on.
    void strike(std::int64_t nanos);
    void strikeNow() { strike(sound_.nowNanos()); }
    /// The one pedal: a press starts, marks a miss or goes on; held it stops, and while nothing runs asks for
    /// the next passage; twice it takes back.
    void pedal(const PedalAct& act);
    /// A press would mark a miss now: it cannot wait until it is known what it is.
    [[nodiscard]] bool marksAtOnce() const { return state_ == State::playing; }
    /// The last strike was not a miss: it was held, and the click stops.
    void strikeHeld();
    /// The last strike was not a miss: another followed, and what was marked before the two is taken back.
    void strikeTwice();
    /// Clean, in open-ended runs; elsewhere a run is clean by itself.
    void markClean(std::int64_t nanos);

    /// Runs of that kind, while stopped: those of the rule at the tempo of its standing, a try, without the
    /// click and in context at the target, aside at half the present tempo.
    void begin(RunKind kind);
    /// The player names the present tempo as the one they think they can play: each miss drops, and the first
    /// full row stops the click and has found it.
    void seek();
    /// Plays the passage's notes once at the present tempo, or stops them: nothing is logged and nothing
    /// moves.
    void hearFirst(bool withClick);
    void stop();
    void takeBack();
    /// One BPM or notch, only while stopped. In a pause that offers it, slower() takes the half tempo.
    void faster();
    void slower();
    /// A tempo set by hand counts no more: the beat it counts is another.
    void forgetHand();
    /// The player says which stage the passage is in.
    void setStage(Stage stage);

    // In a pause.
    /// The runs without a key were clean, or the player does not want what is offered.
    void goOn();
    /// The runs without a key count for nothing after all.
    void doubt();
    void halveTempo();

    void dismissRest();

    /// Takes what has become audible.
    void tick();

signals:
    /// Another passage is open.
    void opened();
    /// What the notebook knows of the passage changed, or of what it belongs to.
    void recordChanged();
    /// state(), pauseReason(), kind(), unheardRuns() or hearing() changed.
    void stateChanged();
    /// standing() or tempoByHand() changed.
    void standingChanged();
    void feedbackChanged();
    void restChanged();
    /// The bars of played() are those that sound from here on.
    void barsChanged();
    /// A pulse can be heard.
    void pulsed(const piolo::engine::Event& pulse);
    /// Between two runs: no pulse.
    void breathed();
    /// Nothing sounds any more.
    void fellSilent();
    /// Each event, as soon as it can be heard.
    void heard(const piolo::engine::Event& event);
    /// The pedal was held while nothing runs.
    void wantsNext();

private:
    // drill_control.cpp: what is open, and where it stands
    void noteBook(const QString& passage);
    void show(const Standing& standing);
    void settle();
    void setHand(std::optional<Tempo> tempo);
    void setFeedback(Feedback feedback);
    [[nodiscard]] Passage played(RunKind kind) const;
    [[nodiscard]] Standing natural() const;
    [[nodiscard]] Standing standingToStart() const;
    [[nodiscard]] Standing standingFor(RunKind kind) const;

    // drill_keys.cpp: what the player does
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

    PracticeBook& book_;
    SoundPort& sound_;
    DrillSession& session_;
    RestWatch rest_;
    std::deque<engine::Event> coming_; // decided, not audible yet
    Id passage_;
    State state_ = State::stopped;
    RunKind kind_ = RunKind::run;
    engine::Pause pause_ = engine::Pause::noKey;
    bool stopAsked_ = false;
    std::uint64_t strike_ = 0;    // the number of the last one that marked
    std::uint64_t backAfter_ = 0; // once that strike is withdrawn, something is taken back
    bool seeking_ = false;        // the first full row ends it
    std::uint64_t playback_ = 0;  // the number of the one that is heard; 0: none
    std::optional<Tempo> hand_;
    Standing shown_;
    Feedback feedback_ = Feedback::none;
    std::int64_t feedbackSince_ = 0;
    std::vector<Id> unheard_; // the runs that ended clean since the last key
};

} // namespace piolo::practice
