// SPDX-License-Identifier: GPL-3.0-or-later
// What the journal needs of the world, so that tests can stand in for it.
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
    /// Bytes taken, or -1 with errno set.
    virtual long write(std::string_view bytes) = 0;
    /// 0, or -1 with errno set: fdatasync.
    virtual int sync() = 0;
};

/// Opens the own journal file. Tests put faults here.
class AppendOpener {
public:
    virtual ~AppendOpener() = default;
    /// Opens or makes `path` and, when it was made, syncs its folder. Nothing, with errno set, on failure.
    virtual std::unique_ptr<AppendFile> open(const std::string& path) = 0;
};

/// How long the writer waits, in milliseconds. Tests shorten it.
struct Pauses {
    int firstRetry = 50;     ///< before the first new attempt; doubled each time
    int longestRetry = 2000; ///< never longer than this
    int farewell = 2000;     ///< the most that closing a journal waits for the disk
};

std::shared_ptr<Clock> systemClock();
std::shared_ptr<Randomness> systemRandomness();
std::shared_ptr<AppendOpener> posixOpener();

} // namespace piolo::journal
