// SPDX-License-Identifier: GPL-3.0-or-later
// The drill's cycle and what the commands do to it. Lives on the audio thread.
#pragma once

#include "engine/click/click_voice.h"
#include "engine/drill/event_sender.h"
#include "engine/drill/run_history.h"
#include "engine/queue/command.h"
#include "engine/queue/cue_queue.h"
#include "engine/time/timeline.h"

#include <cstdint>
#include <optional>
#include <span>

namespace piolo::engine {

/// Everything but prepare() is real-time-safe. Whatever happens depends on the count of rendered samples
/// alone, never on where a block begins.
class Drill {
public:
    explicit Drill(EventSender& sender) : sender_(sender) {}

    /// Not real-time-safe. Another rate while it runs: a run inside is void and the count-in comes again with
    /// the next bar.
    void prepare(SampleRate rate);
    void obey(const Command& command) noexcept;
    void render(std::span<float> out) noexcept;
    /// As Renderer::setHeard().
    void setHeard(bool heard) noexcept;
    [[nodiscard]] std::uint64_t now() const noexcept { return now_; }
    /// Neither a run nor a pause.
    [[nodiscard]] bool isIdle() const noexcept { return mode_ == Mode::idle; }

private:
    enum class Mode : std::uint8_t { idle, running, paused };
    struct PendingTempo {
        Tempo tempo;
        std::uint64_t tick;
        std::uint64_t sample;
    };

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
    void setTempo(Tempo tempo, Boundary boundary) noexcept;
    [[nodiscard]] bool isInPresentRun(std::uint64_t sample) const noexcept;

    // drill_cycle.cpp: what follows what
    void startAgain(std::uint64_t tick) noexcept;
    void enterGap(std::uint64_t tick, std::uint64_t ticks) noexcept;
    void enterCountIn(std::uint64_t tick) noexcept;
    void enterRun(std::uint64_t tick) noexcept;
    [[nodiscard]] std::uint64_t landingTicks() const noexcept;
    void endRun(Mark mark, VoidReason reason, std::uint64_t sample) noexcept;
    bool goesOnWithout(VoidReason reason, std::uint64_t sample) noexcept;
    void follow(std::uint64_t tick, bool missed) noexcept;
    void pause(Pause why, std::uint64_t sample) noexcept;
    void halt(std::uint64_t sample) noexcept;
    void applyPendingTempo() noexcept;
    void settlePendingTempo() noexcept;
    void moveStanding(Standing standing, std::uint64_t sample) noexcept;
    void announce(std::uint64_t sample) noexcept;
    void soundLost() noexcept;
    void changeRate(SampleRate rate) noexcept;

    // drill.cpp: what sounds when
    [[nodiscard]] std::uint64_t nextSample() const noexcept;
    bool happensNow() noexcept;
    void sectionBegins() noexcept;
    void sectionEnds() noexcept;
    void pulse() noexcept;
    [[nodiscard]] bool isTold(std::uint64_t tick, BarPlace place) const noexcept;
    [[nodiscard]] Click clickAt(std::uint64_t tick, BarPlace place) const noexcept;
    [[nodiscard]] Event event(Event::Kind kind, std::uint64_t sample) const noexcept;

    EventSender& sender_;
    ClickBank bank_;
    SampleRate rate_;
    bool prepared_ = false;
    bool heard_ = true;
    bool muted_ = false; // not heard, or heard again and waiting for a bar to begin
    std::uint64_t now_ = 0;

    Mix mix_;
    DrillPlan plan_;
    DrillMeasure measure_;
    Mode mode_ = Mode::idle;
    Timeline timeline_;
    CueQueue cues_;
    std::optional<PendingTempo> pending_;

    Tally tally_;
    RunRecord run_; // the present one, while timeline_.inRun()
    RunHistory history_;
    std::uint64_t runs_ = 0;
    std::uint64_t runsEnded_ = 0;
    std::int32_t runsWithoutKey_ = 0;
    std::uint64_t press_ = 0;    // the one that is judged now
    std::uint64_t pausedBy_ = 0; // the press that led to the pause, or 0
};

} // namespace piolo::engine
