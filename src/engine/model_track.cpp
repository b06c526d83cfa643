// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/model_track.h"

#include "engine/model.h"

#include <algorithm>

namespace piolo::engine {

struct ModelTrack::State {
    Teller teller; // nobody listens
    Model model{teller};
    ModelSheet sheet;
    std::uint64_t now = 0;
    std::uint64_t length = 0;
};

ModelTrack::ModelTrack(const ModelScore& score, const Mix& mix) : state_(std::make_unique<State>()) {
    state_->sheet.fill(score);
    state_->model.setMix(mix);
}
ModelTrack::~ModelTrack() = default;

void ModelTrack::prepare(SampleRate rate, int /*maxBlock*/) {
    state_->model.prepare(rate, 0);
    state_->sheet.taken.store(true);
    state_->model.start(state_->sheet, 0);
    state_->now = 0;
    state_->length = state_->model.endSample() + state_->model.fade();
}

void ModelTrack::render(std::span<float> out) noexcept {
    std::fill(out.begin(), out.end(), 0.0F);
    state_->model.add(out, state_->now);
    state_->now += out.size();
}

std::uint64_t ModelTrack::length() const noexcept { return state_->length; }

} // namespace piolo::engine
