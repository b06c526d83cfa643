// SPDX-License-Identifier: GPL-3.0-or-later
// The thread that writes a checkpoint.
#pragma once

#include <cstdint>
#include <future>
#include <stop_token>
#include <string>
#include <thread>

namespace piolo::journal {

/// What writeCheckpoint() needs to know.
struct CheckpointTask {
    std::string file;
    std::string folder;
    std::string device;
};

/// Writes one checkpoint, at low priority.
class CheckpointWriter {
public:
    /// `farewellMillis`: the longest that the destructor waits for the thread to stop. A thread that hangs in
    /// a disk operation is left behind; it uses nothing of this object.
    CheckpointWriter(CheckpointTask task, int farewellMillis);
    ~CheckpointWriter();
    CheckpointWriter(const CheckpointWriter&) = delete;
    CheckpointWriter& operator=(const CheckpointWriter&) = delete;

private:
    int farewellMillis_;
    std::stop_source stop_;
    std::future<void> ended_;
    std::thread thread_;
};

} // namespace piolo::journal
