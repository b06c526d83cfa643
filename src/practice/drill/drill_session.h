// SPDX-License-Identifier: GPL-3.0-or-later
// One engine, one reader and the fold that corrects it: the drill as the models see it.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>

#include "engine/drill/drill_engine.h"
#include "practice/drill/drill_note.h"
#include "practice/drill/drill_reader.h"
#include "practice/drill/note_queue.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"

#include <atomic>
#include <cstdint>
#include <deque>
#include <map>
#include <memory>
#include <thread>

namespace piolo::practice {

/// Window's thread. The reader has a thread of its own, which ends with this.
class DrillSession : public QObject {
    Q_OBJECT
public:
    /// `byHand`: no thread; poll() is called by whoever drives a test in virtual time.
    enum class Reading { ownThread, byHand };

    DrillSession(PracticeBook& book, SoundPort& sound, std::shared_ptr<engine::DrillEngine> engine,
                 Reading reading = Reading::ownThread, QObject* parent = nullptr);
    ~DrillSession() override;

    /// Starts to drill. Runs of any kind but `run` are played at standing.tempo and move nothing; a try is
    /// one run; silent ones have no click between count-in and landing note. False when the engine's queue is
    /// full.
    bool begin(const Passage& passage, Standing standing, RunKind kind);
    /// Plays the passage's notes once at `tempo`, as a model: no run, no fact. The number that playbackBegan
    /// and playbackEnded have as their run; 0 when there is nothing to play, while a drill is active, and
    /// when the engine cannot take it. stop() and begin() end it.
    std::uint64_t playNotes(const Passage& passage, Tempo tempo, bool click);
    /// The player's keys, at the moment they were pressed (nanoseconds of the port's monotonic clock).
    /// The number of the press, for withdraw().
    std::uint64_t miss(std::int64_t nanos);
    /// That press was no miss: what it made is taken back, now or as soon as it is known. Then `withdrawn`.
    void withdraw(std::uint64_t press);
    void clean(std::int64_t nanos);
    void stop();
    void resume();
    void setMix(const engine::Mix& mix);
    /// The notebook changed otherwise than by a run (a mark taken back, a tempo offered): the engine stands
    /// where the notebook stands. Nothing to do for a try, and when the folder is read-only.
    void reconcile();

    /// What the queues between the threads could not take at once: keys that had to wait for the engine, and
    /// pulses that were not shown. No key and nothing that decides a run's mark is among what is left out.
    [[nodiscard]] std::uint64_t keysThatWaited() const { return waited_; }
    [[nodiscard]] std::uint64_t pulsesLeftOut() const { return pulsesLeftOut_; }

    /// From `started` to `stopped`.
    [[nodiscard]] bool active() const { return active_; }
    /// Sends and passes on what waits. Whoever shows the drill calls it often while something sounds.
    void catchUp();
    /// Reads what the engine decided, on the caller's thread. Only with Reading::byHand.
    void poll();

signals:
    /// Keys had to wait, or pulses were left out, for the first time.
    void fellBehind();
    /// Every event once, pulses too, in the engine's order, as soon as it is decided; it can be heard a
    /// little later. Its fact is folded already.
    void noted(const piolo::practice::DrillNote& note);
    /// Nothing that press made counts any more.
    void withdrawn(quint64 press);
    /// The reader's own thread: notes wait.
    void notesWait();

private:
    void readOn();
    void takeNotes();
    void take(const DrillNote& note);
    void sendMark(engine::Command::Kind kind, std::int64_t nanos);
    void keepMade(const DrillNote& note);
    void takeBackMade(std::uint64_t press);
    void adopt(Standing standing);
    /// Now, or as soon as the engine takes it: in order, with the moments at which the keys were pressed.
    void send(const engine::Command& command);
    /// True when nothing waits any more.
    bool sendWaiting();
    void noteWaited();
    void notePulses();

    PracticeBook& book_;
    SoundPort& sound_;
    std::shared_ptr<engine::DrillEngine> engine_;
    NoteQueue notes_;
    DrillReader reader_;
    Id passage_;
    bool apart_ = false; ///< its runs move nothing
    bool active_ = false;
    Standing standing_; // the engine's, as far as it is known
    std::uint64_t runsEnded_ = 0;
    std::uint64_t presses_ = 0;
    std::map<std::uint64_t, BackFact> made_; // by press: what takes back the fact that came of it
    std::deque<engine::Command> waiting_;    // for room in the engine's queue
    std::uint64_t waited_ = 0;
    std::uint64_t pulsesLeftOut_ = 0;
    std::atomic<bool> ending_{false};
    std::thread thread_; // last: it uses the rest
};

} // namespace piolo::practice
