// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/ports.h"

#include <chrono>
#include <ctime>
#include <sys/file.h>
#include <sys/random.h>

namespace piolo::journal {

namespace {

class SystemClock final : public Clock {
public:
    SystemClock() { ::tzset(); }
    Timestamp now() override {
        const auto since1970 = std::chrono::system_clock::now().time_since_epoch();
        const auto millis = std::chrono::floor<std::chrono::milliseconds>(since1970).count();
        const auto seconds = static_cast<std::time_t>(millis / 1000);
        std::tm local{};
        ::localtime_r(&seconds, &local);
        return {millis, static_cast<std::int16_t>(local.tm_gmtoff / 60)};
    }
};

class SystemRandomness final : public Randomness {
public:
    Id id() override {
        Id made;
        // Up to 256 bytes are returned at once; the call can only fail on a kernel without it.
        while (made.isNone())
            if (::getrandom(&made, sizeof made, 0) != static_cast<ssize_t>(sizeof made)) made = {};
        return made;
    }
};

} // namespace

std::shared_ptr<Clock> systemClock() { return std::make_shared<SystemClock>(); }
std::shared_ptr<Randomness> systemRandomness() { return std::make_shared<SystemRandomness>(); }

LockCall systemLock() noexcept { return ::flock; }

} // namespace piolo::journal
