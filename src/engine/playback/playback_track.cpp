// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/playback/playback_track.h"

#include "engine/playback/playback.h"

#include <algorithm>

namespace piolo::engine {

struct PlaybackTrack::State {
    EventSender sender; // nobody reads its events
    Playback playback{sender};
    PlaybackSlot sheet;
    std::uint64_t now = 0;
    std::uint64_t length = 0;
};

PlaybackTrack::PlaybackTrack(const PlaybackScore& score, const Mix& mix) : state_(std::make_unique<State>()) {
    state_->sheet.fill(score);
    state_->playback.setMix(mix);
}
PlaybackTrack::~PlaybackTrack() = default;

void PlaybackTrack::prepare(SampleRate rate, int /*maxBlock*/) {
    state_->playback.prepare(rate, 0);
    state_->sheet.taken.store(true);
    state_->playback.start(state_->sheet, 0);
    state_->now = 0;
    state_->length = state_->playback.endSample() + state_->playback.fade();
}

void PlaybackTrack::render(std::span<float> out) noexcept {
    std::fill(out.begin(), out.end(), 0.0F);
    state_->playback.add(out, state_->now);
    state_->now += out.size();
}

std::uint64_t PlaybackTrack::length() const noexcept { return state_->length; }

} // namespace piolo::engine
