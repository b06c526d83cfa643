// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/output_list.h"

#include "application.h"

#include <doctest/doctest.h>

#include <atomic>
#include <chrono>
#include <semaphore>
#include <thread>

using namespace piolo::device;

namespace {

constexpr std::int64_t now = 1'000'000'000;

bool until(const std::function<bool()>& so) {
    const auto limit = std::chrono::steady_clock::now() + std::chrono::seconds{20};
    while (!so() && std::chrono::steady_clock::now() < limit) std::this_thread::yield();
    return so();
}

} // namespace

TEST_CASE("an output that is plugged in later is known soon after, without waiting for the sound thread") {
    needApplication();
    std::atomic<int> plugged{1};
    SoundThread thread;
    OutputList list{thread, [&plugged] {
                        return std::vector<piolo::practice::SoundOutput>(
                            static_cast<std::size_t>(plugged.load()));
                    }};
    CHECK(list.known(now).empty()); // no answer yet
    CHECK(until([&] { return list.known(now).size() == 1; }));
    plugged = 3;
    CHECK(until([&] { return list.known(now).size() == 3; }));
}

TEST_CASE("a hanging sound thread is queried once, and again only after a while") {
    needApplication();
    struct Hall {
        std::counting_semaphore<> release{0};
        std::atomic<int> asked{0};
    };
    const auto hall = std::make_shared<Hall>();
    {
        SoundThread thread;
        OutputList list{thread, [hall] {
                            ++hall->asked;
                            hall->release.acquire();
                            return std::vector<piolo::practice::SoundOutput>(2);
                        }};
        CHECK(list.known(now).empty());
        REQUIRE(until([&] { return hall->asked == 1; }));
        for (int look = 0; look < 100; ++look) CHECK(list.known(now + look).empty());
        thread.abandon();
        CHECK(list.known(now + OutputList::askAgainAfter).empty());
        CHECK(hall->asked == 1);
        CHECK(list.known(now + OutputList::askAgainAfter + 1).empty());
        CHECK(until([&] { return hall->asked == 2; }));
        hall->release.release(2);
        CHECK(until([&] { return list.known(now + OutputList::askAgainAfter + 2).size() == 2; }));
        hall->release.release(1000);
    }
}
