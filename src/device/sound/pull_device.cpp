// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/pull_device.h"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace piolo::device {
namespace {

constexpr float int16Full = 32767.0F;

template <typename Sample>
void spread(std::span<const float> frames, int channels, char* data, Sample (*convert)(float)) noexcept {
    for (const auto frame : frames) {
        const auto sample = convert(frame);
        for (int channel = 0; channel < channels; ++channel, data += sizeof sample)
            std::memcpy(data, &sample, sizeof sample);
    }
}

float same(float value) { return value; }

std::int16_t toInt16(float value) {
    return static_cast<std::int16_t>(std::lround(std::clamp(value, -1.0F, 1.0F) * int16Full));
}

} // namespace

PullDevice::PullDevice(Feed& feed, FrameFormat format) : feed_{feed}, format_{format} {
    open(QIODevice::ReadOnly | QIODevice::Unbuffered);
}

qint64 PullDevice::bytesAvailable() const { return qint64{RenderHost::maxBlock} * format_.bytesPerFrame(); }

qint64 PullDevice::readData(char* data, qint64 maxSize) {
    const auto frames = maxSize / format_.bytesPerFrame();
    for (qint64 done = 0; done < frames;) {
        const auto count = std::min<qint64>(frames - done, RenderHost::maxBlock);
        const auto block = std::span{block_}.first(static_cast<std::size_t>(count));
        feed_.fill(block);
        put(block, data + done * format_.bytesPerFrame());
        done += count;
    }
    return frames * format_.bytesPerFrame();
}

void PullDevice::put(std::span<const float> frames, char* data) const noexcept {
    if (format_.floats)
        spread(frames, format_.channels, data, same);
    else
        spread(frames, format_.channels, data, toInt16);
}

qint64 PullDevice::writeData(const char* /*data*/, qint64 /*maxSize*/) { return -1; }

} // namespace piolo::device
