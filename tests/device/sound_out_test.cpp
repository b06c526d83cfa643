// SPDX-License-Identifier: GPL-3.0-or-later
// The whole sound output where there is no sound server.
#include "device/sound/sound_out.h"

#include "application.h"
#include "test_renderer.h"

#include <doctest/doctest.h>

#include <chrono>
#include <functional>

using namespace piolo::device;

namespace {

struct Window {
    Window() { needApplication(); }
    bool until(const std::function<bool()>& so) {
        const auto limit = std::chrono::steady_clock::now() + std::chrono::seconds{20};
        while (!so() && std::chrono::steady_clock::now() < limit)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
        return so();
    }
    std::shared_ptr<TestRenderer> renderer = std::make_shared<TestRenderer>();
};

bool isSilent(const SoundOut& sound) {
    return sound.state().kind == piolo::practice::SoundState::Kind::silent;
}

} // namespace

TEST_CASE("without a sound server, the silent clock renders, says so and continues") {
    Window window;
    SoundOut sound{window.renderer};
    int reported = 0;
    sound.onChange([&] { ++reported; });
    sound.start("");
    REQUIRE(window.until([&] { return isSilent(sound) && reported == 1; }));
    CHECK(sound.state().rate == 0);
    CHECK(sound.state().deviceName.empty());
    REQUIRE(window.until([&] { return sound.audibleAt(monotonicNanos()) > 4800; }));
    sound.stop();
    CHECK(window.renderer->rates == std::vector<int>{48'000});
    CHECK(sound.audibleAt(monotonicNanos() + 3'600'000'000'000) == window.renderer->frames);
}

TEST_CASE("the audible sample never goes back and never exceeds what was rendered") {
    Window window;
    SoundOut sound{window.renderer};
    sound.start("");
    std::uint64_t before = 0;
    REQUIRE(window.until([&] {
        const auto now = sound.audibleAt(monotonicNanos());
        CHECK(now >= before);
        before = now;
        return now > 24'000;
    }));
    sound.stop();
    CHECK(before <= window.renderer->frames);
}

TEST_CASE("the offset is how much later sound is heard") {
    Window window;
    SoundOut sound{window.renderer};
    sound.start("");
    REQUIRE(window.until([&] { return sound.audibleAt(monotonicNanos()) > 9600; }));
    const auto then = monotonicNanos() - 50'000'000;
    sound.setOffsetMillis(100);
    const auto late = sound.audibleAt(then);
    sound.setOffsetMillis(0);
    CHECK(sound.audibleAt(then) - late == doctest::Approx(4800).epsilon(0.001));
}

TEST_CASE("starting, choosing and stopping again and again keeps one count and one renderer") {
    Window window;
    SoundOut sound{window.renderer};
    std::uint64_t before = 0;
    for (int turn = 0; turn < 4; ++turn) {
        sound.start("");
        sound.choose("not there");
        const auto resumed =
            window.until([&] { return isSilent(sound) && sound.audibleAt(monotonicNanos()) > before; });
        CAPTURE(static_cast<int>(sound.state().kind));
        CAPTURE(sound.audibleAt(monotonicNanos()));
        CAPTURE(SoundOut::threadsLeftBehind());
        REQUIRE(resumed);
        before = sound.audibleAt(monotonicNanos());
        sound.stop();
    }
    CHECK(window.renderer->overlaps == 0);
    CHECK_FALSE(sound.outputs().size() > 0);
}

TEST_CASE("destroying a running sound output ends its threads") {
    Window window;
    {
        SoundOut sound{window.renderer};
        sound.start("");
        REQUIRE(window.until([&] { return isSilent(sound); }));
    }
    CHECK(window.until([&] { return window.renderer.use_count() == 1; }));
}
