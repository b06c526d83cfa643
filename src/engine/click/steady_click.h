// SPDX-License-Identifier: GPL-3.0-or-later
// A click without a passage, which goes on while its tempo, meter and subdivision change. Lives on the audio
// thread.
#pragma once

#include "engine/click/click_choice.h"
#include "engine/click/click_plan.h"
#include "engine/drill/event_sender.h"
#include "engine/time/timeline.h"

#include <cstdint>
#include <optional>

namespace piolo::engine {

/// Everything is real-time-safe. Says when which click is due; what plays it is the caller's. It sends
/// clickBegan, the pulses, clickChanged and clickEnded.
class SteadyClick {
public:
    explicit SteadyClick(EventSender& sender) : sender_(sender) {}

    /// With another rate, the click that runs goes on at the next bar.
    void setRate(SampleRate rate, std::uint64_t now) noexcept;
    /// A new number begins a click at once, with the first beat of a bar. The number of the click that runs
    /// changes it: tempo and subdivision at the next beat, the meter at the next bar. The number of one that
    /// has ended does nothing.
    void play(std::uint64_t number, const ClickPlan& plan, std::uint64_t now) noexcept;
    /// Ends the click with that number, if it runs.
    void end(std::uint64_t number, std::uint64_t now) noexcept;
    /// Ends whichever click runs.
    void stop(std::uint64_t now) noexcept { end(number_, now); }
    /// As Renderer::setHeard().
    void setHeard(bool heard) noexcept;

    /// The sample of the next pulse; the largest number while no click runs.
    [[nodiscard]] std::uint64_t nextSample() const noexcept;
    /// The pulse that is due at `now`; nothing if none is.
    std::optional<Click> take(std::uint64_t now) noexcept;

private:
    void enter(Origin origin, const ClickPlan& plan, BarPlace place) noexcept;
    void follow(std::uint64_t tick, BarPlace place) noexcept;
    [[nodiscard]] Event event(Event::Kind kind, std::uint64_t sample) const noexcept;

    EventSender& sender_;
    SampleRate rate_;
    std::uint64_t number_ = 0; // of the click that runs; 0: none
    std::uint64_t last_ = 0;   // the newest number
    ClickPlan plan_;           // what sounds
    ClickPlan wanted_;         // what is to sound as soon as a beat or a bar begins
    ClickChoice choice_;
    DrillMeasure measure_;
    Timeline timeline_;
    bool heard_ = true;
    bool muted_ = false; // not heard, or heard again and waiting for the beginning of a bar
};

} // namespace piolo::engine
