// SPDX-License-Identifier: GPL-3.0-or-later
// What the journal needs from outside, so that tests can replace it.
#pragma once

#include "core/base/id.h"
#include "core/time/timestamp.h"

#include <memory>
#include <string>
#include <string_view>

namespace piolo::journal {

/// The wall clock with the local offset. Any thread.
class Clock {
public:
    virtual ~Clock() = default;
    virtual Timestamp now() = 0;
};

/// 128 random bits at a time. Any thread.
class Randomness {
public:
    virtual ~Randomness() = default;
    virtual Id id() = 0;
};

/// A file opened for appending. One thread at a time.
class AppendFile {
public:
    virtual ~AppendFile() = default;
    /// The number of bytes written, or -1 with errno set.
    virtual long write(std::string_view bytes) = 0;
    /// fdatasync: 0, or -1 with errno set.
    virtual int sync() = 0;
};

/// Opens this device's journal file. Tests simulate failures here.
class AppendOpener {
public:
    virtual ~AppendOpener() = default;
    /// Opens or creates `path` and, if it created it, syncs its folder. Null, with errno set, on failure.
    virtual std::unique_ptr<AppendFile> open(const std::string& path) = 0;
};

/// How long the writer waits, in milliseconds. Tests shorten these.
struct Pauses {
    int firstRetry = 50;     ///< before the first retry; doubled each time
    int longestRetry = 2000; ///< the longest wait before a retry
    int farewell = 2000;     ///< the longest time that closing a journal waits for the disk
};

std::shared_ptr<Clock> systemClock();
std::shared_ptr<Randomness> systemRandomness();
std::shared_ptr<AppendOpener> posixOpener();

} // namespace piolo::journal
