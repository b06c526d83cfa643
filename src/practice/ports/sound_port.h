// SPDX-License-Identifier: GPL-3.0-or-later
// What practice needs of the sound device. The device room implements it; tests put a fake in its place.
#pragma once

#include "practice/ports/sound_output.h"
#include "practice/ports/sound_state.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace piolo::practice {

/// Window thread, except nowNanos(), sleptNanos() and audibleAt().
class SoundPort {
public:
    virtual ~SoundPort() = default;
    /// Opens that device; "" is the default one.
    virtual void start(const std::string& deviceId) = 0;
    /// Switches to another device; a running drill continues at the next bar.
    virtual void choose(const std::string& deviceId) = 0;
    /// How much later sound is heard than the system reports, for example with wireless headphones: -500…1000
    /// ms.
    virtual void setOffsetMillis(int millis) = 0;
    /// The outputs known so far. Does not wait for the sound system: call again a moment later.
    [[nodiscard]] virtual std::vector<SoundOutput> outputs() const = 0;
    [[nodiscard]] virtual SoundState state() const = 0;
    /// `heard` is called on the window thread when state() has changed.
    virtual void onChange(std::function<void()> heard) = 0;
    /// Any thread. The monotonic clock now, in nanoseconds.
    [[nodiscard]] virtual std::int64_t nowNanos() const = 0;
    /// Any thread. How long the machine has been suspended since it was started, in nanoseconds, during which
    /// nowNanos() stood still; 0 if that is not known.
    [[nodiscard]] virtual std::int64_t sleptNanos() const { return 0; }
    /// Any thread. The engine's sample audible at that moment.
    [[nodiscard]] virtual std::uint64_t audibleAt(std::int64_t nanos) const = 0;
};

} // namespace piolo::practice
