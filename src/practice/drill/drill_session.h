// SPDX-License-Identifier: GPL-3.0-or-later
// One engine, one reader and the fold that corrects it: the drill as the models see it.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>

#include "engine/drill/drill_engine.h"
#include "practice/drill/drill_note.h"
#include "practice/drill/drill_reader.h"
#include "practice/drill/note_queue.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <map>
#include <memory>
#include <mutex>
#include <thread>

namespace piolo::practice {

/// Window thread. The reader has its own thread, which ends with this object.
class DrillSession : public QObject {
    Q_OBJECT
public:
    /// `byHand`: no thread; a test in virtual time calls poll().
    enum class Reading { ownThread, byHand };

    DrillSession(PracticeBook& book, SoundPort& sound, std::shared_ptr<engine::DrillEngine> engine,
                 Reading reading = Reading::ownThread, QObject* parent = nullptr);
    ~DrillSession() override;

    /// Starts a drill. Runs of any kind but `run` are played at standing.tempo and do not change the
    /// standing; a try is a single run; silent runs have no click between count-in and landing note. False if
    /// the engine's queue is full. `turn`: in a set; it ends with a `stopped` event that says so.
    bool begin(const Passage& passage, Standing standing, RunKind kind, const engine::Turn& turn = {});
    /// Plays the passage's notes once at `tempo`: no run, no fact. Returns the number that playbackBegan and
    /// playbackEnded carry as their run; 0 if there is nothing to play, during a drill, and if the engine
    /// cannot accept it. stop() and begin() end it.
    std::uint64_t playNotes(const Passage& passage, Tempo tempo, bool click);
    /// Clicks without a passage, at once: no run, no fact. Returns the number that clickBegan and clickEnded
    /// carry as their run. It ends when a drill or a playback begins.
    std::uint64_t beginClick(const engine::ClickPlan& plan);
    /// Does nothing if the click with that number has ended, like endClick().
    void changeClick(std::uint64_t number, const engine::ClickPlan& plan);
    void endClick(std::uint64_t number);
    /// The same for any score.
    std::uint64_t play(const engine::PlaybackScore& score);
    /// The player's keys, with the time at which they were pressed (nanoseconds of the port's monotonic
    /// clock). Returns the number of the press for withdraw().
    std::uint64_t miss(std::int64_t nanos);
    /// That press was not a miss: its effect is taken back, now or as soon as it is known. Then `withdrawn`
    /// is emitted.
    void withdraw(std::uint64_t press);
    void clean(std::int64_t nanos);
    void stop();
    void resume();
    void setMix(const engine::Mix& mix);
    /// The notebook changed other than by a run (a mark was taken back, a tempo accepted): the engine adopts
    /// the notebook's standing. Does nothing for a try and if the folder is read-only.
    void reconcile();

    /// What the queues between threads could not accept at once: keys that had to wait for the engine, and
    /// pulses that were not shown. No key press and nothing that decides the mark of a run is ever left out.
    [[nodiscard]] std::uint64_t keysThatWaited() const { return waited_; }
    [[nodiscard]] std::uint64_t pulsesLeftOut() const { return pulsesLeftOut_; }

    /// From `started` to `stopped`.
    [[nodiscard]] bool active() const { return active_; }
    /// Sends and passes on whatever is waiting. Call this often while something sounds.
    void catchUp();
    /// Reads the engine's decisions on the caller's thread. Only with Reading::byHand.
    void poll();

signals:
    /// Keys had to wait or pulses were left out for the first time.
    void fellBehind();
    /// Every event once, including pulses, in the engine's order, as soon as it is decided; it becomes
    /// audible a little later. Its fact is already folded.
    void noted(const piolo::practice::DrillNote& note);
    /// Nothing that this press caused counts any more.
    void withdrawn(quint64 press);
    /// Reader thread: notes are waiting.
    void notesWait();

private:
    void readOn();
    /// Something was sent, or the session ends: the reader looks at once and more often.
    void wakeReader();
    bool give(const engine::Command& command);
    void takeNotes();
    void take(const DrillNote& note);
    void sendMark(engine::Command::Kind kind, std::int64_t nanos);
    [[nodiscard]] bool isOfAnotherPassage(const DrillNote& note) const;
    void keepMade(const DrillNote& note);
    void takeBackMade(std::uint64_t press);
    void adopt(Standing standing);
    /// Sends now, or as soon as the engine accepts it: in order, with the times at which the keys were
    /// pressed.
    void send(const engine::Command& command);
    /// True if nothing is waiting any more.
    bool sendWaiting();
    void noteWaited();
    void notePulses();

    PracticeBook& book_;
    SoundPort& sound_;
    std::shared_ptr<engine::DrillEngine> engine_;
    NoteQueue notes_;
    DrillReader reader_;
    Id passage_;
    bool apart_ = false; ///< its runs do not change the standing
    bool active_ = false;
    Standing standing_; // the engine's, as far as it is known
    std::uint64_t runsEnded_ = 0;
    std::uint64_t presses_ = 0;
    std::uint64_t clicks_ = 0;
    std::map<std::uint64_t, BackFact> made_; // by press: the fact that takes back what it caused
    std::deque<engine::Command> waiting_;    // waiting for room in the engine's queue
    std::uint64_t waited_ = 0;
    std::uint64_t pulsesLeftOut_ = 0;
    std::mutex waking_;
    std::condition_variable awake_;
    bool sent_ = false;   ///< guarded by waking_
    bool ending_ = false; ///< guarded by waking_
    std::thread thread_;  // last: it uses the other members
};

} // namespace piolo::practice
