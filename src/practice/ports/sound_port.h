// SPDX-License-Identifier: GPL-3.0-or-later
// What the models need of the sound device. The device room is plugged in by app; tests plug in a fake.
#pragma once

#include <QList>
#include <QString>

#include <cstdint>
#include <functional>

namespace piolo::practice {

struct SoundOutput {
    QString id;
    QString name;
};

/// How the sound is doing, as far as a screen shows it.
enum class SoundHealth { starting, playing, silent, needsRestart };

/// Window's thread, but for audibleAt().
class SoundPort {
public:
    virtual ~SoundPort() = default;
    virtual void start(const QString& deviceId) = 0;
    virtual void choose(const QString& deviceId) = 0;
    virtual void setOffsetMillis(int millis) = 0;
    [[nodiscard]] virtual QList<SoundOutput> outputs() const = 0;
    [[nodiscard]] virtual SoundHealth health() const = 0;
    [[nodiscard]] virtual QString deviceName() const = 0;
    [[nodiscard]] virtual std::uint64_t underruns() const = 0;
    virtual void onChange(std::function<void()> heard) = 0;
    /// Any thread. The monotonic clock now, in nanoseconds.
    [[nodiscard]] virtual std::int64_t nowNanos() const = 0;
    /// Any thread. The engine's sample audible at that moment.
    [[nodiscard]] virtual std::uint64_t audibleAt(std::int64_t nanos) const = 0;
};

} // namespace piolo::practice
