// SPDX-License-Identifier: GPL-3.0-or-later
// Plugs the device room into what the models ask of it.
#pragma once

#include "device/sound/sound_out.h"
#include "practice/ports/sound_port.h"

namespace piolo::app {

/// A SoundPort over one SoundOut; threads as SoundOut's.
class SoundAdapter final : public practice::SoundPort {
public:
    explicit SoundAdapter(std::shared_ptr<engine::Renderer> renderer) : out_(std::move(renderer)) {}

    void start(const QString& deviceId) override { out_.start(deviceId.toStdString()); }
    void choose(const QString& deviceId) override { out_.choose(deviceId.toStdString()); }
    void setOffsetMillis(int millis) override { out_.setOffsetMillis(millis); }
    [[nodiscard]] QList<practice::SoundOutput> outputs() const override;
    [[nodiscard]] practice::SoundHealth health() const override;
    [[nodiscard]] QString deviceName() const override {
        return QString::fromStdString(out_.state().deviceName);
    }
    [[nodiscard]] std::uint64_t underruns() const override { return out_.state().underruns; }
    void onChange(std::function<void()> heard) override { out_.onChange(std::move(heard)); }
    [[nodiscard]] std::int64_t nowNanos() const override { return device::monotonicNanos(); }
    [[nodiscard]] std::uint64_t audibleAt(std::int64_t nanos) const override { return out_.audibleAt(nanos); }

private:
    device::SoundOut out_;
};

} // namespace piolo::app
