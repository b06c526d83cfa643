// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill/drill_engine.h"

#include "engine/click/steady_click.h"
#include "engine/drill/drill.h"
#include "engine/drill/event_sender.h"
#include "engine/playback/playback.h"
#include "engine/queue/ring.h"

#include <algorithm>
#include <array>
#include <atomic>

namespace piolo::engine {

struct DrillEngine::State {
    Ring<Command, 256> commands;
    EventSender sender;
    Drill drill{sender};
    std::array<PlaybackSlot, 2> sheets;
    Playback playback{sender};
    SteadyClick steady{sender};
    std::uint64_t playbacks = 0; // sender thread only
    SampleRate rate;
    bool prepared = false;
    std::atomic<std::uint64_t> rendered{0};

    void obey(const Command& command) noexcept {
        using Kind = Command::Kind;
        if (command.kind == Kind::hear) return hear(command.playback);
        if (command.kind == Kind::click) return click(command);
        if (command.kind == Kind::endClick) return steady.end(command.number, drill.now());
        if (command.kind == Kind::start || command.kind == Kind::stop) playback.stop(drill.now());
        if (command.kind == Kind::setMix) playback.setMix(command.mix);
        drill.obey(command);
        if (drill.isRunning()) steady.stop(drill.now());
    }
    void hear(std::size_t at) noexcept {
        if (at >= sheets.size() || !sheets[at].taken.load(std::memory_order_acquire)) return;
        steady.stop(drill.now());
        playback.start(sheets[at], drill.now());
        if (!drill.isIdle()) playback.stop(drill.now());
    }
    void click(const Command& command) noexcept {
        playback.stop(drill.now());
        steady.play(command.number, command.click, drill.now());
        if (drill.isRunning()) steady.stop(drill.now());
    }
    /// The clicks without a passage sound in the drill's own mix, so the sum stays in range.
    void sound(std::span<float> out) noexcept {
        while (!out.empty()) {
            while (const auto click = steady.take(drill.now())) drill.strike(*click);
            const auto room = steady.nextSample() - drill.now();
            const auto count = static_cast<std::size_t>(std::min<std::uint64_t>(out.size(), room));
            drill.render(out.first(count));
            out = out.subspan(count);
        }
    }
};

DrillEngine::DrillEngine() : state_(std::make_unique<State>()) {}
DrillEngine::~DrillEngine() = default;

void DrillEngine::prepare(SampleRate rate, int /*maxBlock*/) {
    state_->drill.prepare(rate);
    state_->steady.setRate(rate, state_->drill.now());
    if (!state_->prepared || rate != state_->rate)
        state_->playback.prepare(rate, state_->drill.now(), state_->drill.clicks());
    state_->rate = rate;
    state_->prepared = true;
}

void DrillEngine::render(std::span<float> out) noexcept {
    if (!state_->prepared) {
        std::fill(out.begin(), out.end(), 0.0F);
        return;
    }
    state_->sender.flush();
    Command command;
    while (!state_->sender.isCrowded() && state_->commands.pop(command)) state_->obey(command);
    const auto begin = state_->drill.now();
    state_->sound(out);
    state_->playback.add(out, begin);
    state_->rendered.store(state_->drill.now(), std::memory_order_release);
}

void DrillEngine::setHeard(bool heard) noexcept {
    state_->playback.stop(state_->drill.now());
    state_->drill.setHeard(heard);
    state_->steady.setHeard(heard);
}

bool DrillEngine::send(const Command& command) noexcept { return state_->commands.push(command); }
std::uint64_t DrillEngine::hear(const PlaybackScore& playback) noexcept {
    const auto free =
        std::find_if(state_->sheets.begin(), state_->sheets.end(),
                     [](const PlaybackSlot& sheet) { return !sheet.taken.load(std::memory_order_acquire); });
    if (free == state_->sheets.end()) return 0;
    free->fill(playback);
    free->number = ++state_->playbacks;
    free->taken.store(true, std::memory_order_release);
    Command command;
    command.kind = Command::Kind::hear;
    command.playback = static_cast<std::uint8_t>(free - state_->sheets.begin());
    if (state_->commands.push(command)) return state_->playbacks;
    free->taken.store(false, std::memory_order_release);
    return 0;
}
bool DrillEngine::read(Event& event) noexcept { return state_->sender.read(event); }
std::uint64_t DrillEngine::rendered() const noexcept {
    return state_->rendered.load(std::memory_order_acquire);
}
std::uint64_t DrillEngine::pulsesNotSent() const noexcept { return state_->sender.pulsesNotSent(); }

} // namespace piolo::engine
