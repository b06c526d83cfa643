// SPDX-License-Identifier: GPL-3.0-or-later
// Fakes for what the journal needs: a clock that is set, ids that are counted, a disk that fails on request.
#pragma once

#include "journal/folder/ports.h"

#include <cerrno>
#include <condition_variable>
#include <functional>
#include <map>
#include <mutex>
#include <utility>
#include <vector>

namespace piolo::test {

class SetClock final : public journal::Clock {
public:
    explicit SetClock(Timestamp time) : time_(time) {}
    Timestamp now() override {
        const std::lock_guard lock(mutex_);
        return time_;
    }
    void set(Timestamp time) {
        const std::lock_guard lock(mutex_);
        time_ = time;
    }

private:
    std::mutex mutex_;
    Timestamp time_;
};

class CountedIds final : public journal::Randomness {
public:
    explicit CountedIds(std::uint64_t high = 7) : high_(high) {}
    Id id() override {
        const std::lock_guard lock(mutex_);
        return {high_, ++low_};
    }

private:
    std::mutex mutex_;
    std::uint64_t high_;
    std::uint64_t low_ = 0;
};

/// The outcome of a call. `half`: a write takes half of its bytes and returns that number.
enum class Fate : std::uint8_t { good, fails, half };
enum class Call : std::uint8_t { open, write, sync };

/// A disk in memory. A failed write leaves a third of its bytes behind; after a failed sync, only half of the
/// unsynced bytes remain. `durable` is what survives a power failure.
class FakeDisk final : public journal::AppendOpener {
public:
    /// Decides the outcome of the n-th call (counted from 1) of a kind.
    std::function<Fate(Call, int)> fate = [](Call, int) { return Fate::good; };
    int error = EIO;

    int stayIn(const std::string&) override { return 0; }
    std::unique_ptr<journal::AppendFile> open(const std::string& path) override;
    [[nodiscard]] std::string durable(const std::string& path);
    [[nodiscard]] bool isDurable(const std::string& text);
    [[nodiscard]] std::vector<Call> calls();

    /// From now on, every sync blocks until releaseSync().
    void holdSync();
    void waitUntilHeld();
    void releaseSync();

private:
    class File;
    struct Content {
        std::string durable;
        std::string pending;
    };

    Fate next(Call call);
    long write(const std::string& path, std::string_view bytes);
    int sync(const std::string& path);

    std::mutex mutex_;
    std::condition_variable changed_;
    std::map<std::string, Content> files_;
    std::map<Call, int> counts_;
    std::vector<Call> calls_;
    bool holding_ = false;
    bool held_ = false;
};

} // namespace piolo::test
