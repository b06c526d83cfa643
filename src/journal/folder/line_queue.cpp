// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/line_queue.h"

#include <algorithm>
#include <utility>

namespace piolo::journal {

namespace {
std::ptrdiff_t signedOf(std::size_t count) { return static_cast<std::ptrdiff_t>(count); }
} // namespace

void LineQueue::add(WaitingLine line) {
    const std::lock_guard lock(mutex_);
    lines_.push_back(std::move(line));
    work_.notify_one();
}

std::size_t LineQueue::size() const {
    const std::lock_guard lock(mutex_);
    return lines_.size();
}

std::vector<WaitingLine> LineQueue::from(std::size_t first, std::size_t most) const {
    const std::lock_guard lock(mutex_);
    const std::size_t begin = std::min(first, lines_.size());
    const std::size_t count = std::min(most, lines_.size() - begin);
    return {lines_.begin() + signedOf(begin), lines_.begin() + signedOf(begin + count)};
}

void LineQueue::remove(std::size_t count) {
    const std::lock_guard lock(mutex_);
    lines_.erase(lines_.begin(), lines_.begin() + signedOf(count));
    changed_.notify_all();
}

void LineQueue::end(Time deadline) {
    const std::lock_guard lock(mutex_);
    ending_ = true;
    deadline_ = deadline;
    work_.notify_one();
}

bool LineQueue::isOver(Time now) const {
    const std::lock_guard lock(mutex_);
    return ending_ && now >= deadline_;
}

void LineQueue::finish() {
    const std::lock_guard lock(mutex_);
    finished_ = true;
    changed_.notify_all();
}

bool LineQueue::waitForMore(std::size_t known) {
    std::unique_lock lock(mutex_);
    work_.wait(lock, [&] { return ending_ || lines_.size() > known; });
    return lines_.size() > known;
}

void LineQueue::waitForMore(std::size_t known, Time time) {
    std::unique_lock lock(mutex_);
    work_.wait_until(lock, bounded(time), [&] { return lines_.size() > known; });
}

void LineQueue::pause(Time time) {
    std::unique_lock lock(mutex_);
    const bool before = ending_;
    work_.wait_until(lock, bounded(time), [&] { return ending_ != before; });
}

bool LineQueue::waitUntilEmpty(Time time) {
    std::unique_lock lock(mutex_);
    return changed_.wait_until(lock, time, [this] { return lines_.empty(); });
}

bool LineQueue::waitUntilFinished() {
    std::unique_lock lock(mutex_);
    return changed_.wait_until(lock, deadline_, [this] { return finished_; });
}

} // namespace piolo::journal
