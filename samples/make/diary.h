// SPDX-License-Identifier: GPL-3.0-or-later
// What the simulated player records: the facts, and the notebook folded from them.
#pragma once

#include "core/history/notebook.h"
#include "seeded.h"

#include <string>
#include <vector>

namespace piolo::samples {

/// A wall clock that advances only on request.
class WallClock {
public:
    /// Moves to a local time of day, in central European time with daylight saving time.
    void turnTo(Date date, std::int64_t millisOfDay);
    void pass(std::int64_t millis) { now_.utcMillis += millis; }
    [[nodiscard]] Timestamp now() const { return now_; }
    [[nodiscard]] Date today() const { return now_.date(); }

private:
    Timestamp now_;
};

class Diary {
public:
    Diary(std::string device, Seeded& random, const WallClock& clock);

    Id record(FactBody body);
    /// From now on, ids are drawn from `random`.
    void drawFrom(Seeded& random) { random_ = &random; }
    [[nodiscard]] const Notebook& notebook() const { return notebook_; }
    [[nodiscard]] const std::vector<Fact>& facts() const { return facts_; }

private:
    std::string device_;
    Seeded* random_;
    const WallClock& clock_;
    Notebook notebook_;
    std::vector<Fact> facts_;
};

} // namespace piolo::samples
