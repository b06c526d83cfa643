// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/virtual/scripted_player.h"

#include <utility>

namespace piolo::practice {

namespace {

constexpr std::uint64_t reaction = 180;     // ms from the wrong note to the key
constexpr std::uint64_t afterThought = 400; // ms into the breath
constexpr std::int32_t hardBar = 2;         // of the run, counted from 0
constexpr std::int32_t hardBeat = 2;        // from 0

} // namespace

ScriptedPlayer::ScriptedPlayer(std::string script, std::int32_t rate)
    : script_(std::move(script)), rate_(rate), done_(script_.empty()) {}

std::uint64_t ScriptedPlayer::millis(std::uint64_t count) const {
    return count * static_cast<std::uint64_t>(rate_) / 1000;
}

std::optional<std::uint64_t> ScriptedPlayer::hear(const engine::Event& event) {
    using Kind = engine::Event::Kind;
    if (done_) return std::nullopt;
    if (event.kind == Kind::runEnded) return endOf(event);
    if (event.kind == Kind::lateMiss && std::exchange(late_, false)) done_ = ++next_ == script_.size();
    const bool hardPlace = event.kind == Kind::pulse && event.phase == engine::Phase::run &&
                           event.bar == hardBar && event.beat == hardBeat && event.part == 0;
    if (!hardPlace || script_[next_] != 'm' || pressed_) return std::nullopt;
    pressed_ = true;
    return event.sample + millis(reaction);
}

std::optional<std::uint64_t> ScriptedPlayer::endOf(const engine::Event& event) {
    pressed_ = false;
    if (script_[next_] == 'l') {
        late_ = true;
        return event.sample + millis(afterThought);
    }
    done_ = ++next_ == script_.size();
    return std::nullopt;
}

} // namespace piolo::practice
