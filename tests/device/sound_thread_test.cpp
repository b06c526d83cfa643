// SPDX-License-Identifier: GPL-3.0-or-later
// The sound thread while Qt's events may not run on it. The tests check the order of things, not their
// timing.
#include "device/sound/sound_thread.h"

#include "application.h"

#include <doctest/doctest.h>

#include <QCoreApplication>
#include <QTimer>

#include <atomic>
#include <future>

using namespace piolo::device;

namespace {

/// Waits until the thread has finished everything posted before.
void settle(SoundThread& thread) {
    const auto done = std::make_shared<std::promise<void>>();
    auto over = done->get_future();
    thread.post([done] { done->set_value(); });
    REQUIRE(over.wait_for(std::chrono::seconds{20}) == std::future_status::ready);
}

} // namespace

TEST_CASE("while Qt's events may not run, posted work is done and no Qt timer fires") {
    needApplication();
    std::atomic<bool> may{false};
    std::promise<void> fired;
    auto firing = fired.get_future();
    SoundThread thread{[&may] { return may.load(); }};
    thread.post([&fired] { QTimer::singleShot(0, [&fired] { fired.set_value(); }); });
    for (int work = 0; work < 100; ++work) settle(thread);
    CHECK(firing.wait_for(std::chrono::seconds{0}) == std::future_status::timeout);
    may = true;
    CHECK(firing.wait_for(std::chrono::seconds{20}) == std::future_status::ready);
}

TEST_CASE("work that runs Qt's event loop ends before the next work begins") {
    needApplication();
    std::atomic<bool> may{false};
    SoundThread thread{[&may] { return may.load(); }};
    std::atomic<int> inside{0};
    std::atomic<bool> overlapped{false};
    for (int work = 0; work < 50; ++work)
        thread.post([&] {
            overlapped = overlapped || inside++ != 0;
            QCoreApplication::processEvents();
            --inside;
        });
    settle(thread);
    CHECK_FALSE(overlapped);
    CHECK(inside == 0);
}

TEST_CASE("a thread on which Qt's events may not run ends on request") {
    needApplication();
    const auto left = SoundThread::leftBehind();
    {
        SoundThread thread{[] { return false; }};
        settle(thread);
    }
    CHECK(SoundThread::leftBehind() == left);
}
