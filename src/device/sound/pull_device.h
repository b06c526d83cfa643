// SPDX-License-Identifier: GPL-3.0-or-later
// The QIODevice a QAudioSink reads from: mono float from a Feed, in the sink's own sample format.
#pragma once

#include "device/sound/feed.h"

#include <QIODevice>

#include <array>

namespace piolo::device {

/// How the sink wants its frames.
struct FrameFormat {
    bool floats = true; ///< float32, else int16
    int channels = 1;   ///< each gets the same sound
    [[nodiscard]] int bytesPerFrame() const noexcept { return channels * (floats ? 4 : 2); }
};

/// Never runs out: a read of no bytes would stop the sink for good.
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
