// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound_thread.h"

#include <QCoreApplication>
#include <QEvent>
#include <QObject>
#include <QThread>

#include <deque>
#include <memory>
#include <mutex>
#include <utility>
#include <vector>

namespace piolo::device {
namespace {

constexpr unsigned long endWithinMillis = 1000;

// Threads that hang are kept reachable and never destroyed: destroying a running QThread ends the program.
struct Left {
    std::mutex mutex;
    std::vector<QThread*> threads;
};
Left& left() {
    static auto* const kept = new Left;
    return *kept;
}

} // namespace

/// Where work is handed over. The queue has a lock of its own, which the thread sanitizer can see; Qt's has
/// one that it cannot.
class SoundThread::Desk final : public QObject {
public:
    void put(std::function<void()> work) {
        auto bell = std::make_unique<QEvent>(QEvent::User);
        {
            const std::lock_guard lock{mutex_};
            works_.push_back(std::move(work));
        }
        QCoreApplication::postEvent(this, bell.release());
    }

protected:
    void customEvent(QEvent* /*bell*/) override { take()(); }

private:
    std::function<void()> take() {
        const std::lock_guard lock{mutex_};
        auto work = std::move(works_.front());
        works_.pop_front();
        return work;
    }

    std::mutex mutex_;
    std::deque<std::function<void()>> works_;
};

SoundThread::~SoundThread() {
    if (thread_ == nullptr) return;
    thread_->quit();
    if (!thread_->wait(endWithinMillis)) {
        abandon();
        return;
    }
    delete desk_;
    delete thread_;
}

void SoundThread::post(std::function<void()> work) {
    if (thread_ == nullptr) {
        thread_ = new QThread;
        thread_->setObjectName(QStringLiteral("sound"));
        desk_ = new Desk;
        desk_->moveToThread(thread_);
        thread_->start();
    }
    desk_->put(std::move(work));
}

void SoundThread::abandon() {
    if (thread_ == nullptr) return;
    const std::lock_guard lock{left().mutex};
    left().threads.push_back(thread_);
    thread_ = nullptr;
    desk_ = nullptr;
}

int SoundThread::leftBehind() noexcept {
    const std::lock_guard lock{left().mutex};
    return static_cast<int>(left().threads.size());
}

SoundThread& SoundThread::ofProcess() {
    static auto* const thread = new SoundThread;
    return *thread;
}

} // namespace piolo::device
