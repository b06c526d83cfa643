// SPDX-License-Identifier: GPL-3.0-or-later
// A model written down in advance, for `model`, offline.
#pragma once

#include "engine/mix.h"
#include "engine/model_score.h"
#include "engine/renderer.h"

#include <cstdint>
#include <memory>

namespace piolo::engine {

/// Renders a model from its first to its last sample; silence after that.
class ModelTrack final : public Renderer {
public:
    /// Takes memory.
    ModelTrack(const ModelScore& score, const Mix& mix);
    ~ModelTrack() override;
    /// Before the first render(). Not real-time-safe.
    void prepare(SampleRate rate, int maxBlock) override;
    /// Real-time-safe.
    void render(std::span<float> out) noexcept override;
    /// The sample nearest to the end of the last beat, and a tenth of a second in which all fades. After
    /// prepare().
    [[nodiscard]] std::uint64_t length() const noexcept;

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace piolo::engine
