// SPDX-License-Identifier: GPL-3.0-or-later
// Interprets a single pedal that does everything: a press, holding it, a double press.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace piolo::practice {

/// What the pedal did. Times are nanoseconds of the monotonic clock.
struct PedalAct {
    enum class Kind {
        mark,  ///< it went down, and its mark cannot wait
        press, ///< a single press, neither held nor followed by another; never after a mark
        held,  ///< held down for the hold time
        twice, ///< two presses in quick succession
    };
    Kind kind = Kind::mark;
    std::int64_t nanos = 0; ///< when it went down; for `twice`, the second time
    bool marked = false;    ///< for held and twice: a mark was reported first, which is now void
    bool operator==(const PedalAct&) const = default;
};

/// Plain values, no clock: the caller asks due() when to call again. A press that marks is reported at once;
/// any other waits until it is clear what kind it is.
class PedalPress {
public:
    struct Timing {
        std::int64_t hold = 800'000'000;  ///< holding it down for this long counts as held
        std::int64_t twice = 350'000'000; ///< a second press within this time makes a double press
        std::int64_t bounce = 30'000'000; ///< a release within this time may turn out to be a bounce
    };
    using Acts = std::vector<PedalAct>;

    void setTiming(const Timing& timing) { timing_ = timing; }
    /// `atOnce`: a press marks now and cannot wait.
    [[nodiscard]] Acts down(std::int64_t nanos, bool atOnce);
    [[nodiscard]] Acts up(std::int64_t nanos);
    /// The most recently reported release was not real: the contact bounced, or a held key repeats.
    void stillDown();
    /// Passes the current time.
    [[nodiscard]] Acts pass(std::int64_t nanos);
    /// When pass() will have something to report if nothing else happens before.
    [[nodiscard]] std::optional<std::int64_t> due() const;
    /// Cancels whatever is in progress.
    void forget() { *this = PedalPress(timing_); }

    PedalPress() = default;

private:
    explicit PedalPress(const Timing& timing) : timing_(timing) {}
    [[nodiscard]] std::int64_t heldFrom() const { return since_ + timing_.hold; }
    [[nodiscard]] std::int64_t singleAfter() const;

    Timing timing_;
    bool open_ = false; // it is not clear yet what kind of press it is
    bool isDown_ = false;
    bool marked_ = false; // the press was reported as a mark
    std::int64_t since_ = 0;
    std::int64_t upAt_ = 0;
};

/// The timing of that many milliseconds each.
[[nodiscard]] constexpr PedalPress::Timing pedalTiming(int hold, int twice, int bounce) {
    constexpr std::int64_t nanosInMilli = 1'000'000;
    return {hold * nanosInMilli, twice * nanosInMilli, bounce * nanosInMilli};
}

} // namespace piolo::practice
