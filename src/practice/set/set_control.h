// SPDX-License-Identifier: GPL-3.0-or-later
// A set: two to four passages taken in turn.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>

#include "practice/drill/drill_control.h"
#include "practice/figures/sitting_figures.h"
#include "practice/log/practice_book.h"
#include "practice/set/turn_length.h"

#include <cstddef>
#include <vector>

namespace piolo::practice {

/// What was played of one passage of the set.
struct SetPart {
    Id passage;
    std::size_t first = 0; ///< the number of its entries when the set began
    SittingFigures figures;
};

/// Window thread. Plays its turns through the drill, which does everything else as usual: marks, pauses, the
/// log. The set begins with start() and ends when the drill stops.
class SetControl : public QObject {
    Q_OBJECT
public:
    static constexpr std::size_t fewest = 2;
    static constexpr std::size_t most = engine::Turn::mostPlaces;

    /// Both must outlive this object.
    SetControl(PracticeBook& book, DrillControl& drill, QObject* parent = nullptr);

    /// Plays these different passages in turn, the first one first. False if there are too few or too many,
    /// or if something is playing.
    bool start(const std::vector<Id>& passages, TurnLength length);

    [[nodiscard]] bool playing() const { return playing_; }
    /// A turn is announced: its count-in has not been heard yet.
    [[nodiscard]] bool announcing() const { return announcing_; }
    /// Of the set that is being played, or was played last; empty before.
    [[nodiscard]] const std::vector<SetPart>& parts() const { return parts_; }
    /// The index of the part whose turn it is, and of the one that follows.
    [[nodiscard]] std::size_t place() const { return place_; }
    [[nodiscard]] std::size_t nextPlace() const { return placeAfter(place_); }

signals:
    /// playing(), announcing() or place() changed.
    void changed();
    /// It was played, and is over: the drill has stopped.
    void ended();
    /// The figures of parts() changed.
    void figuresChanged();

private:
    void playTurn(std::size_t place, bool follows);
    void playNext();
    void hearPulse();
    void noteState();
    void count();
    [[nodiscard]] bool exists(Id passage) const;
    [[nodiscard]] std::size_t placeAfter(std::size_t place) const;

    PracticeBook& book_;
    DrillControl& drill_;
    std::vector<SetPart> parts_;
    TurnLength length_;
    std::size_t place_ = 0;
    bool playing_ = false;
    bool announcing_ = false;
    bool counts_ = false; // nothing else was played since the set began
};

} // namespace piolo::practice
