// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/drill_engine.h"

#include "engine/drill.h"
#include "engine/ring.h"
#include "engine/teller.h"

#include <algorithm>
#include <atomic>

namespace piolo::engine {

struct DrillEngine::State {
    Ring<Command, 256> commands;
    Teller teller;
    Drill drill{teller};
    bool prepared = false;
    std::atomic<std::uint64_t> rendered{0};
};

DrillEngine::DrillEngine() : state_(std::make_unique<State>()) {}
DrillEngine::~DrillEngine() = default;

void DrillEngine::prepare(SampleRate rate, int /*maxBlock*/) {
    state_->drill.prepare(rate);
    state_->prepared = true;
}

void DrillEngine::render(std::span<float> out) noexcept {
    if (!state_->prepared) {
        std::fill(out.begin(), out.end(), 0.0F);
        return;
    }
    state_->teller.flush();
    Command command;
    while (!state_->teller.isCrowded() && state_->commands.pop(command)) state_->drill.obey(command);
    state_->drill.render(out);
    state_->rendered.store(state_->drill.now(), std::memory_order_release);
}

void DrillEngine::setHeard(bool heard) noexcept { state_->drill.setHeard(heard); }

bool DrillEngine::send(const Command& command) noexcept { return state_->commands.push(command); }
bool DrillEngine::read(Event& event) noexcept { return state_->teller.read(event); }
std::uint64_t DrillEngine::rendered() const noexcept {
    return state_->rendered.load(std::memory_order_acquire);
}
std::uint64_t DrillEngine::pulsesNotTold() const noexcept { return state_->teller.pulsesNotTold(); }

} // namespace piolo::engine
