// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound_thread.h"

#include <QObject>
#include <QThread>

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
        desk_ = new QObject;
        desk_->moveToThread(thread_);
        thread_->start();
    }
    QMetaObject::invokeMethod(desk_, std::move(work), Qt::QueuedConnection);
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
