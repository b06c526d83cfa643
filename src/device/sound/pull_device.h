// SPDX-License-Identifier: GPL-3.0-or-later
// The QIODevice that a QAudioSink reads from: mono float from a Feed, converted to the sink's own sample
// format.
#pragma once

#include "device/sound/feed.h"

#include <QIODevice>

#include <array>

namespace piolo::device {

/// The frame format of the sink.
struct FrameFormat {
    bool floats = true; ///< true: float32, false: int16
    int channels = 1;   ///< all channels get the same sound
    [[nodiscard]] int bytesPerFrame() const noexcept { return channels * (floats ? 4 : 2); }
};

/// Never runs out: reading zero bytes would stop the sink for good.
class PullDevice final : public QIODevice {
public:
    PullDevice(Feed& feed, FrameFormat format);

    [[nodiscard]] bool isSequential() const override { return true; }
    [[nodiscard]] qint64 bytesAvailable() const override;

protected:
    /// Whole frames only. Real-time-safe.
    qint64 readData(char* data, qint64 maxSize) override;
    qint64 writeData(const char* data, qint64 maxSize) override;

private:
    void put(std::span<const float> frames, char* data) const noexcept;

    Feed& feed_;
    FrameFormat format_;
    std::array<float, RenderHost::maxBlock> block_{};
};

} // namespace piolo::device
