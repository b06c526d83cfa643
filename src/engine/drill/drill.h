// SPDX-License-Identifier: GPL-3.0-or-later
// The drill's cycle and how commands affect it. Lives on the audio thread.
#pragma once

#include "engine/click/click_voice.h"
#include "engine/drill/event_sender.h"
#include "engine/drill/run_history.h"
#include "engine/drill/turn_tones.h"
#include "engine/drill/turn_watch.h"
#include "engine/queue/command.h"
#include "engine/queue/cue_queue.h"
#include "engine/time/timeline.h"

#include <cstdint>
#include <span>

namespace piolo::engine {

/// Everything except prepare() is real-time-safe. What happens depends only on the number of rendered
/// samples, never on where a block begins.
class Drill {
public:
    explicit Drill(EventSender& sender) : sender_(sender) {}

    /// Not real-time-safe. If the rate changes while the drill runs, the current run becomes void and the
    /// count-in starts again with the next bar.
    void prepare(SampleRate rate);
    void obey(const Command& command) noexcept;
    void render(std::span<float> out) noexcept;
    /// As Renderer::setHeard().
    void setHeard(bool heard) noexcept;
    /// A click that is not the drill's, at the beginning of the next render().
    void strike(Click click) noexcept;
    [[nodiscard]] std::uint64_t now() const noexcept { return now_; }
    [[nodiscard]] const ClickBank& clicks() const noexcept { return bank_; }
    [[nodiscard]] bool isRunning() const noexcept { return mode_ == Mode::running; }
    /// True if neither a run nor a pause is in progress.
    [[nodiscard]] bool isIdle() const noexcept { return mode_ == Mode::idle; }

private:
    enum class Mode : std::uint8_t { idle, running, paused };

    // drill_commands.cpp: what each command does
    void start(const DrillPlan& plan) noexcept;
    void stop() noexcept;
    void resume() noexcept;
    void press(const Command& command) noexcept;
    void miss(std::uint64_t sample) noexcept;
    void missInside(std::uint64_t sample) noexcept;
    void missLate(RunRecord& run, std::uint64_t sample) noexcept;
    void withdraw(std::uint64_t press) noexcept;
    void unmark() noexcept;
    void clean(std::uint64_t sample) noexcept;
    void adopt(const Command& command) noexcept;
    void followAdopted(std::uint64_t tick, bool moves) noexcept;
    [[nodiscard]] bool isInPresentRun(std::uint64_t sample) const noexcept;

    // drill_cycle.cpp: the order of the sections
    void startAgain(std::uint64_t tick) noexcept;
    void enterGap(std::uint64_t tick, std::uint64_t ticks) noexcept;
    void enterCountIn(std::uint64_t tick) noexcept;
    void enterRun(std::uint64_t tick) noexcept;
    [[nodiscard]] std::uint64_t landingTicks(std::uint64_t end) const noexcept;
    void endRun(Mark mark, VoidReason reason, std::uint64_t sample) noexcept;
    bool goesOnWithout(VoidReason reason, std::uint64_t sample) noexcept;
    void follow(std::uint64_t tick, bool missed) noexcept;
    void pause(Pause why, std::uint64_t sample) noexcept;
    void halt(std::uint64_t sample) noexcept;
    void announce(std::uint64_t sample) noexcept;
    void soundLost() noexcept;
    void changeRate(SampleRate rate) noexcept;

    // drill_turns.cpp: from one turn of a set to the next
    std::uint64_t beginTurn() noexcept;
    void endTurn(std::uint64_t sample) noexcept;
    void missEarlier(RunRecord& run) noexcept;

    // drill.cpp: what sounds and when
    [[nodiscard]] std::uint64_t nextSample() const noexcept;
    bool happensNow() noexcept;
    void sectionBegins() noexcept;
    void sectionEnds() noexcept;
    void pulse() noexcept;
    [[nodiscard]] bool isSent(std::uint64_t tick, BarPlace place) const noexcept;
    [[nodiscard]] Click clickAt(std::uint64_t tick, BarPlace place) const noexcept;
    [[nodiscard]] Event event(Event::Kind kind, std::uint64_t sample) const noexcept;

    EventSender& sender_;
    ClickBank bank_;
    SampleRate rate_;
    bool prepared_ = false;
    bool heard_ = true;
    bool muted_ = false; // not heard, or heard again and waiting for the beginning of a bar
    std::uint64_t now_ = 0;

    Mix mix_;
    DrillPlan plan_;
    DrillMeasure measure_;
    Mode mode_ = Mode::idle;
    Timeline timeline_;
    CueQueue cues_;
    TurnTones tones_;

    Tally tally_;
    RunRecord run_; // the current run, while timeline_.inRun()
    RunHistory history_;
    TurnWatch watch_;
    std::uint64_t runs_ = 0;
    std::uint64_t runsEnded_ = 0;
    std::int32_t runsWithoutKey_ = 0;
    std::uint64_t press_ = 0;    // the press being judged now
    std::uint64_t pausedBy_ = 0; // the press that led to the pause, or 0
};

} // namespace piolo::engine
