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

/// Beside the values of errno: something other than a file has the name.
inline constexpr int noRegularFile = -1;
/// Beside the values of errno: another folder has the name of the practice folder, or none.
inline constexpr int folderMissing = -2;

/// A file opened for appending. One thread at a time.
class AppendFile {
public:
    virtual ~AppendFile() = default;
    /// The number of bytes written, or -1 with errno set, to noRegularFile or folderMissing, too.
    virtual long write(std::string_view bytes) = 0;
    /// fdatasync: 0, or -1 with errno set.
    virtual int sync() = 0;
};

/// Opens this device's journal file. Tests simulate failures here.
class AppendOpener {
public:
    virtual ~AppendOpener() = default;
    /// From now on, files are opened and written only while `folder`, which must exist, is the one that it is
    /// now. Returns 0 or an errno value.
    virtual int stayIn(const std::string& folder) = 0;
    /// Opens or creates `path`, but not its folder, and syncs its folder. Null, with errno set as by
    /// AppendFile::write(), on failure.
    virtual std::unique_ptr<AppendFile> open(const std::string& path) = 0;
};

/// How long the writer waits, in milliseconds. Tests shorten these.
struct Pauses {
    int firstRetry = 50;     ///< before the first retry; doubled each time
    int longestRetry = 2000; ///< the longest wait before a retry
    int farewell = 2000;     ///< the longest time that closing a journal waits for the disk
};

/// flock(2) by default. Tests simulate a disk without locks.
using LockCall = int (*)(int file, int operation);
[[nodiscard]] LockCall systemLock() noexcept;

std::shared_ptr<Clock> systemClock();
std::shared_ptr<Randomness> systemRandomness();
std::shared_ptr<AppendOpener> posixOpener();

} // namespace piolo::journal
