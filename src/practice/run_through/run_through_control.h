// SPDX-License-Identifier: GPL-3.0-or-later
// The run-through in progress: its clock, its stops, their review, and what is recorded.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>

#include "core/facts/run_through_fact.h"
#include "practice/keys/pedal_press.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sleep_watch.h"
#include "practice/ports/sound_port.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace piolo::practice {

/// Window thread. There is no click: the clock estimates the current bar if the piece's tempo and meter are
/// known. The player reviews a run-through before it is recorded.
class RunThroughControl : public QObject {
    Q_OBJECT
public:
    enum class State { ready, playing, review };
    struct ReviewedStop {
        std::int64_t millis = 0;         ///< from the start
        std::optional<std::int32_t> bar; ///< 0: not known; nothing: the player's correction is not a bar
    };

    /// `book` and `sound` must outlive this object.
    RunThroughControl(PracticeBook& book, SoundPort& sound, QObject* parent = nullptr);

    /// Switches to that piece. Does nothing while one is being played or reviewed.
    void open(Id piece);
    [[nodiscard]] Id pieceId() const { return id_; }
    /// Nothing if no piece is open.
    [[nodiscard]] std::optional<Piece> piece() const;

    [[nodiscard]] State state() const { return state_; }
    /// How long it has been playing, or how long the one being reviewed was; 0 while none is.
    [[nodiscard]] std::int64_t millis() const;
    /// The bar that the music has reached; nothing while none is being played, or if the clock cannot tell.
    [[nodiscard]] std::optional<std::int32_t> bar() const;
    [[nodiscard]] const std::vector<ReviewedStop>& stops() const { return stops_; }
    /// True if no correction is invalid.
    [[nodiscard]] bool allBarsValid() const;

    void start();
    /// The music stopped here and continues.
    void markStop();
    /// The most recent stop was not one.
    void takeBackStop();
    /// The single pedal: a press starts or marks a stop; holding it marks the last note; a double press takes
    /// back a stop.
    void pedal(const PedalAct& act);
    /// True if a press marks a stop now, which cannot wait until it is clear what kind of press it is.
    [[nodiscard]] bool marksAtOnce() const { return state_ == State::playing; }
    /// Call it often while playing. If the machine was suspended since the start, nobody knows what was
    /// played meanwhile: it ends, to be reviewed, as given up.
    void tick();
    /// The last note was reached, or the player gave up.
    void finish(bool reachedTheEnd);

    // During the review.
    /// The player corrects the bar of a stop, as in ReviewedStop.
    void setBar(std::size_t stop, std::optional<std::int32_t> bar);
    /// Records it. Does nothing while a bar is invalid or if the folder is read-only.
    void keep();
    void discard();

signals:
    /// Another piece is open.
    void opened();
    void stateChanged();
    /// A stop was marked, taken back or corrected.
    void stopsChanged();

private:
    [[nodiscard]] std::optional<std::int32_t> barAt(std::int64_t millis) const;
    void turnTo(State state);

    PracticeBook& book_;
    SoundPort& sound_;
    Id id_;
    State state_ = State::ready;
    std::int64_t began_ = 0;  // nanoseconds of the port's clock
    std::int64_t millis_ = 0; // of the one being reviewed
    bool finished_ = true;
    std::vector<ReviewedStop> stops_;
    SleepWatch sleep_;
};

} // namespace piolo::practice
