// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/sound_thread.h"

#include "device/sound/server_probe.h"

#include <QCoreApplication>
#include <QEvent>
#include <QObject>
#include <QThread>

#include <chrono>
#include <condition_variable>
#include <deque>
#include <memory>
#include <mutex>
#include <utility>
#include <vector>

namespace piolo::device {
namespace {

constexpr unsigned long endWithinMillis = 1000;
constexpr std::chrono::milliseconds askEvery{200};

// Hanging threads stay reachable and are never destroyed: destroying a running QThread ends the program.
struct Left {
    std::mutex mutex;
    std::vector<QThread*> threads;
};
Left& left() {
    static auto* const kept = new Left;
    return *kept;
}

} // namespace

/// The work queue. It has its own lock, which the thread sanitizer can see; it cannot see Qt's.
class SoundThread::WorkQueue final : public QObject {
public:
    explicit WorkQueue(std::function<bool()> qtMayTurn) : qtMayTurn_{std::move(qtMayTurn)} {}

    void put(std::function<void()> work) {
        auto bell = std::make_unique<QEvent>(QEvent::User);
        {
            const std::lock_guard lock{mutex_};
            works_.push_back(std::move(work));
        }
        arrived_.notify_all();
        QCoreApplication::postEvent(this, bell.release());
    }
    void end() {
        const std::lock_guard lock{mutex_};
        over_ = true;
        arrived_.notify_all();
    }

protected:
    void customEvent(QEvent* /*bell*/) override {
        if (working_)
            return; // work that runs Qt's event loop itself: the outer call continues with the
                    // queue
        working_ = true;
        do {
            workOff();
        } while (qtMayTurn_ && !qtMayTurn_() && waitForWork());
        working_ = false;
    }

private:
    void workOff() {
        while (const auto work = take()) work();
    }
    std::function<void()> take() {
        const std::lock_guard lock{mutex_};
        if (works_.empty()) return {};
        auto work = std::move(works_.front());
        works_.pop_front();
        return work;
    }
    /// Waits for a moment at most. False if the thread is to end.
    bool waitForWork() {
        std::unique_lock lock{mutex_};
        arrived_.wait_for(lock, askEvery, [this] { return over_ || !works_.empty(); });
        return !over_;
    }

    std::function<bool()> qtMayTurn_;
    bool working_ = false; // the thread's own
    std::mutex mutex_;
    std::condition_variable arrived_;
    std::deque<std::function<void()>> works_;
    bool over_ = false; // guarded by mutex_
};

SoundThread::~SoundThread() { end(); }

void SoundThread::end() {
    if (thread_ == nullptr) return;
    queue_->end();
    thread_->quit();
    if (!thread_->wait(endWithinMillis)) {
        abandon();
        return;
    }
    delete queue_;
    delete thread_;
    queue_ = nullptr;
    thread_ = nullptr;
}

void SoundThread::post(std::function<void()> work) {
    if (thread_ == nullptr) {
        thread_ = new QThread;
        thread_->setObjectName(QStringLiteral("sound"));
        queue_ = new WorkQueue{qtMayTurn_};
        queue_->moveToThread(thread_);
        thread_->start();
    }
    queue_->put(std::move(work));
}

void SoundThread::abandon() {
    if (thread_ == nullptr) return;
    const std::lock_guard lock{left().mutex};
    left().threads.push_back(thread_);
    thread_ = nullptr;
    queue_ = nullptr;
}

int SoundThread::leftBehind() noexcept {
    const std::lock_guard lock{left().mutex};
    return static_cast<int>(left().threads.size());
}

SoundThread& SoundThread::ofProcess() {
    static auto* const thread = new SoundThread{[] { return ServerProbe::ofSystem().answers(); }};
    return *thread;
}

} // namespace piolo::device
