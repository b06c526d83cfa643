// SPDX-License-Identifier: GPL-3.0-or-later
// Reads one pedal that does everything: a press, a pedal held, two presses running.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace piolo::practice {

/// What the pedal said. Moments are nanoseconds of the monotonic clock.
struct PedalAct {
    enum class Kind {
        mark,  ///< it went down, and what that marks cannot wait
        press, ///< one press, neither held nor followed by another; never after a mark
        held,  ///< down for as long as a hold takes
        twice, ///< two presses, close together
    };
    Kind kind = Kind::mark;
    std::int64_t nanos = 0; ///< when it went down; of `twice`: for the second time
    bool marked = false;    ///< of held and twice: a mark was told first, which was none
    bool operator==(const PedalAct&) const = default;
};

/// Plain values, no clock: whoever feeds it asks due() when to come again. A press that marks at once is told
/// the moment it comes; any other waits until it is known what it is.
class PedalPress {
public:
    struct Timing {
        std::int64_t hold = 800'000'000;  ///< down for so long is held
        std::int64_t twice = 350'000'000; ///< a second press comes within this
        std::int64_t bounce = 30'000'000; ///< a release may turn out to be none for so long
    };
    using Acts = std::vector<PedalAct>;

    void setTiming(const Timing& timing) { timing_ = timing; }
    /// `atOnce`: a press marks now and cannot wait.
    [[nodiscard]] Acts down(std::int64_t nanos, bool atOnce);
    [[nodiscard]] Acts up(std::int64_t nanos);
    /// The release told last was none: the contact bounced, or a held key repeats.
    void stillDown();
    /// So late it is now.
    [[nodiscard]] Acts pass(std::int64_t nanos);
    /// When pass() has something to tell, if nothing else comes before.
    [[nodiscard]] std::optional<std::int64_t> due() const;
    /// Whatever was going on is none.
    void forget() { *this = PedalPress(timing_); }

    PedalPress() = default;

private:
    explicit PedalPress(const Timing& timing) : timing_(timing) {}
    [[nodiscard]] std::int64_t heldFrom() const { return since_ + timing_.hold; }
    [[nodiscard]] std::int64_t singleAfter() const;

    Timing timing_;
    bool open_ = false; // it is not known yet what the press is
    bool isDown_ = false;
    bool marked_ = false; // the press was told as a mark
    std::int64_t since_ = 0;
    std::int64_t upAt_ = 0;
};

} // namespace piolo::practice
