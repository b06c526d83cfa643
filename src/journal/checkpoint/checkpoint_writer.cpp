// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/checkpoint/checkpoint_writer.h"

#include "journal/checkpoint/checkpoint.h"

#include <chrono>
#include <malloc.h>
#include <sys/resource.h>
#include <unistd.h>
#include <utility>

namespace piolo::journal {

namespace {

constexpr int lowPriority = 10;

void runTask(const CheckpointTask& task, const std::stop_token& stop) {
    ::setpriority(PRIO_PROCESS, static_cast<id_t>(::gettid()),
                  lowPriority); // of this thread: the click takes precedence
    writeCheckpoint(task.file, task.folder, task.device, stop);
    ::malloc_trim(0); // all facts were in memory twice
}

} // namespace

CheckpointWriter::CheckpointWriter(CheckpointTask task, int farewellMillis)
    : farewellMillis_(farewellMillis) {
    std::packaged_task<void()> work(
        [task = std::move(task), stop = stop_.get_token()] { runTask(task, stop); });
    ended_ = work.get_future();
    thread_ = std::thread(std::move(work));
}

CheckpointWriter::~CheckpointWriter() {
    stop_.request_stop();
    if (ended_.wait_for(std::chrono::milliseconds(farewellMillis_)) == std::future_status::ready)
        thread_.join();
    else
        thread_.detach();
}

} // namespace piolo::journal
