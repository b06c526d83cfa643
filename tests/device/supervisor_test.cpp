// SPDX-License-Identifier: GPL-3.0-or-later
// The supervisor with devices that hang, refuse, vanish and come back. The tests set the time; only the
// threads are real.
#include "device/sound/supervisor.h"

#include "application.h"
#include "test_renderer.h"

#include <doctest/doctest.h>

#include <array>
#include <chrono>
#include <semaphore>
#include <thread>

using namespace piolo::device;

namespace {

using Kind = piolo::practice::SoundState::Kind;
constexpr std::int64_t look = 100'000'000;

/// What the next sinks do, and what happened to them. Outlives threads that are abandoned.
struct Script {
    std::atomic<Opening::Kind> opens{Opening::Kind::opened};
    std::atomic<int> asks{static_cast<int>(Supervisor::provenFills)}; // how often it asks for samples once it
                                                                      // is open
    std::atomic<bool> hangsInOpen{false};
    std::atomic<bool> hangsInClose{false};
    std::atomic<int> rate{48'000};
    std::atomic<int> made{0};
    std::atomic<int> hung{0};
    std::atomic<int> destroyed{0};
    std::counting_semaphore<> release{0};
    std::counting_semaphore<> woken{0};
    std::atomic<bool> soundAfterWaking{false};
    std::atomic<Feed*> feed{nullptr};
    Sink::Ears ears; // of the last sink that opened
};

class ScriptedSink final : public Sink {
public:
    explicit ScriptedSink(std::shared_ptr<Script> script) : script_{std::move(script)} { ++script_->made; }
    ~ScriptedSink() override {
        if (script_->hangsInClose) script_->release.acquire();
        ++script_->destroyed;
    }
    Opening open(const std::string& deviceId, Feed& feed, Ears ears) override {
        if (script_->hangsInOpen) {
            ++script_->hung;
            script_->release.acquire();
            drink(feed);
            if (feed.take(48'000)) script_->soundAfterWaking = true;
            drink(feed);
            script_->woken.release();
            return {Opening::Kind::refused, {}, 0};
        }
        script_->ears = std::move(ears);
        script_->feed = &feed;
        for (int ask = 0; ask < script_->asks; ++ask) drink(feed);
        return {script_->opens, "scripted " + deviceId, script_->rate};
    }

private:
    void drink(Feed& feed) {
        std::array<float, 16> out{};
        feed.fill(out);
        for (const auto sample : out)
            if (sample != 0) script_->soundAfterWaking = true;
    }
    std::shared_ptr<Script> script_;
};

struct House {
    House() { needApplication(); }
    std::shared_ptr<TestRenderer> renderer = std::make_shared<TestRenderer>();
    std::shared_ptr<RenderHost> host = std::make_shared<RenderHost>(renderer);
    std::shared_ptr<Script> script = std::make_shared<Script>();
    SoundThread thread;
    Supervisor keeper{host, thread, [script = script] { return std::make_unique<ScriptedSink>(script); }};
    std::int64_t now = 0;

    /// Lets the threads work, while the test's time stands still, until `so` is true.
    bool until(const std::function<bool()>& so) {
        const auto limit = std::chrono::steady_clock::now() + std::chrono::seconds{20};
        while (!so() && std::chrono::steady_clock::now() < limit) {
            keeper.look(now);
            std::this_thread::yield();
        }
        return so();
    }
    bool untilState(Kind kind) {
        return until([&] { return keeper.state().kind == kind; });
    }
    void pass(std::int64_t nanos) {
        for (const auto end = now + nanos; now < end;) keeper.look(now += look);
    }
    /// The same, but gives the threads real time at every step.
    void passSettled(std::int64_t nanos) {
        for (const auto end = now + nanos; now < end;) {
            keeper.look(now += look);
            REQUIRE(until([&] { return !keeper.isOpening(); }));
        }
    }
    /// With a device that has been asking for samples for a while.
    void playWarm() {
        keeper.start("", now);
        REQUIRE(untilState(Kind::playing));
        drink(Supervisor::coldFills);
        keeper.look(now);
    }
    void drink(int times) {
        std::array<float, 960> out{};
        for (int time = 0; time < times; ++time) script->feed.load()->fill(out);
    }
};

} // namespace

TEST_CASE("a device that opens plays, and its name is reported") {
    House house;
    CHECK(house.keeper.state().kind == Kind::starting);
    house.keeper.start("horn room", house.now);
    REQUIRE(house.untilState(Kind::playing));
    CHECK(house.keeper.state().deviceName == "scripted horn room");
    CHECK(house.keeper.state().rate == 48'000);
    house.drink(3);
    CHECK(house.host->rendered() == 2880);
}

TEST_CASE("without a device, time continues in silence, and a device that appears takes over") {
    House house;
    house.script->opens = Opening::Kind::noDevice;
    house.keeper.start("", house.now);
    REQUIRE(house.untilState(Kind::silent));
    CHECK(house.keeper.state().deviceName.empty());
    REQUIRE(house.until([&] { return house.host->rendered() > 0; }));
    house.script->opens = Opening::Kind::opened;
    house.passSettled(Supervisor::retryWhenSilent);
    REQUIRE(house.untilState(Kind::playing));
    const auto before = house.host->rendered();
    house.drink(1);
    CHECK(house.host->rendered() == before + 960);
    CHECK(house.renderer->overlaps == 0);
}

TEST_CASE("a refused device does not disturb the silent clock") {
    House house;
    house.script->opens = Opening::Kind::refused;
    house.keeper.start("", house.now);
    REQUIRE(house.untilState(Kind::silent));
    REQUIRE(house.until([&] { return house.host->rendered() > 0; }));
    house.passSettled(5 * Supervisor::second);
    CHECK(house.script->made >= 3);
    house.keeper.stop();
    CHECK(house.renderer->rates == std::vector<int>{48'000});
}

TEST_CASE("a hanging attempt to open is abandoned; if it wakes up, it gets silence and cannot take over") {
    House house;
    const auto left = SoundThread::leftBehind();
    house.script->hangsInOpen = true;
    house.keeper.start("", house.now);
    REQUIRE(house.until([&] { return house.script->hung == 1; }));
    house.pass(Supervisor::openingLimit + 2 * look);
    REQUIRE(house.untilState(Kind::silent));
    CHECK(SoundThread::leftBehind() == left + 1);
    REQUIRE(house.until([&] { return house.host->rendered() > 0; }));
    house.script->hangsInOpen = false;
    house.pass(Supervisor::retryAfterLoss);
    REQUIRE(house.untilState(Kind::playing));
    house.script->release.release();
    house.script->woken.acquire();
    CHECK_FALSE(house.script->soundAfterWaking);
    CHECK(house.renderer->overlaps == 0);
}

TEST_CASE("a device that stops asking for samples is lost within the limit and retried") {
    House house;
    house.playWarm();
    house.script->opens = Opening::Kind::noDevice;
    house.pass(Supervisor::quietLimit - look);
    CHECK(house.keeper.state().kind == Kind::playing);
    house.pass(2 * look);
    REQUIRE(house.untilState(Kind::silent));
    house.passSettled(look);
    house.script->opens = Opening::Kind::opened;
    house.passSettled(Supervisor::retryWhenSilent + look);
    REQUIRE(house.untilState(Kind::playing));
    CHECK(house.until([&] { return house.script->destroyed >= 1; }));
}

TEST_CASE("a device that has only been opened may be quiet for longer") {
    House house;
    house.keeper.start("", house.now);
    REQUIRE(house.untilState(Kind::playing));
    house.drink(6);
    house.pass(Supervisor::openingLimit - look);
    CHECK(house.keeper.state().kind == Kind::playing);
    house.script->opens = Opening::Kind::noDevice;
    house.pass(3 * look);
    CHECK(house.untilState(Kind::silent));
}

TEST_CASE("a window that was blocked loses no device") {
    House house;
    house.playWarm();
    house.keeper.look(house.now += 60 * Supervisor::second);
    CHECK(house.keeper.state().kind == Kind::playing);
    CHECK(house.script->made == 1);
}

TEST_CASE(
    "a sound server that stays away needs a restart, and says playing again if it comes back after all") {
    House house;
    house.playWarm();
    house.script->opens = Opening::Kind::refused;
    house.script->ears.ended();
    REQUIRE(house.untilState(Kind::silent));
    house.passSettled(Supervisor::backWithin - Supervisor::second);
    CHECK(house.keeper.state().kind == Kind::silent);
    house.passSettled(3 * Supervisor::second);
    REQUIRE(house.untilState(Kind::needsRestart));
    house.script->opens = Opening::Kind::opened;
    house.passSettled(Supervisor::retryWhenSilent + look);
    CHECK(house.untilState(Kind::playing));
}

TEST_CASE("however long the sound server is away, its return needs no restart") {
    House house;
    house.playWarm();
    house.script->opens = Opening::Kind::noServer;
    house.script->ears.ended();
    REQUIRE(house.untilState(Kind::silent));
    house.passSettled(3600 * Supervisor::second);
    CHECK(house.keeper.state().kind == Kind::silent);
    // The server answers again but does not have a device yet.
    house.script->opens = Opening::Kind::refused;
    house.passSettled(Supervisor::backWithin - Supervisor::second);
    CHECK(house.keeper.state().kind == Kind::silent);
    house.script->opens = Opening::Kind::opened;
    house.passSettled(Supervisor::retryAfterLoss + look);
    CHECK(house.untilState(Kind::playing));
}

TEST_CASE("a sound server that starts later is used as soon as it answers") {
    House house;
    house.script->opens = Opening::Kind::noServer;
    house.keeper.start("", house.now);
    REQUIRE(house.untilState(Kind::silent));
    house.passSettled(60 * Supervisor::second);
    CHECK(house.keeper.state().kind == Kind::silent);
    house.script->opens = Opening::Kind::opened;
    house.passSettled(Supervisor::retryAfterLoss + look);
    CHECK(house.untilState(Kind::playing));
}

TEST_CASE(
    "the silent clock keeps the rate of the lost device, and the renderer knows that nothing is heard") {
    House house;
    house.script->rate = 44'100;
    house.playWarm();
    const auto before = house.host->rendered();
    house.script->opens = Opening::Kind::noServer;
    house.script->ears.ended();
    REQUIRE(house.untilState(Kind::silent));
    REQUIRE(house.until([&] { return house.host->rendered() > before; }));
    house.keeper.stop();
    CHECK(house.renderer->rates == std::vector<int>{44'100});
    CHECK_FALSE(house.renderer->isHeard);
    house.script->opens = Opening::Kind::opened;
    house.keeper.start("", house.now);
    REQUIRE(house.untilState(Kind::playing));
    CHECK(house.renderer->isHeard);
}

TEST_CASE("a device that opens but never asks for samples leaves the silent clock alone") {
    House house;
    house.script->opens = Opening::Kind::noServer;
    house.keeper.start("", house.now);
    REQUIRE(house.untilState(Kind::silent));
    REQUIRE(house.until([&] { return house.host->rendered() > 0; }));
    house.script->opens = Opening::Kind::opened;
    house.script->asks = static_cast<int>(Supervisor::provenFills) - 1;
    for (int turn = 0; turn < 20; ++turn) {
        house.passSettled(Supervisor::second);
        const auto before = house.host->rendered();
        CHECK(house.keeper.state().kind == Kind::silent);
        REQUIRE(house.until([&] { return house.host->rendered() > before; }));
    }
    CHECK(house.script->made >= 4);
    CHECK_FALSE(house.renderer->isHeard);
    house.script->asks = static_cast<int>(Supervisor::provenFills);
    house.passSettled(2 * Supervisor::openingLimit);
    CHECK(house.untilState(Kind::playing));
}

TEST_CASE("after three hanging threads, no more are started") {
    House house;
    const auto left = SoundThread::leftBehind();
    house.script->hangsInOpen = true;
    house.keeper.start("", house.now);
    for (int thread = 1; thread <= Supervisor::threadLimit; ++thread) {
        REQUIRE(house.until([&] { return house.script->hung == thread; }));
        house.pass(Supervisor::openingLimit + 2 * look);
        house.pass(Supervisor::retryAfterLoss);
    }
    CHECK(house.untilState(Kind::needsRestart));
    house.pass(60 * Supervisor::second);
    CHECK(house.script->made == Supervisor::threadLimit);
    CHECK(SoundThread::leftBehind() == left + Supervisor::threadLimit);
    house.script->release.release(Supervisor::threadLimit);
    for (int thread = 0; thread < Supervisor::threadLimit; ++thread) house.script->woken.acquire();
    CHECK_FALSE(house.script->soundAfterWaking);
}

TEST_CASE("stopping does not wait for a device that hangs while closing") {
    const auto left = SoundThread::leftBehind();
    {
        House house;
        house.script->hangsInClose = true;
        house.keeper.start("", house.now);
        REQUIRE(house.untilState(Kind::playing));
        house.keeper.stop();
        CHECK(SoundThread::leftBehind() == left + 1);
        const auto before = house.host->rendered();
        house.drink(1);
        CHECK(house.host->rendered() == before);
        house.script->release.release();
        CHECK(house.until([&] { return house.script->destroyed == 1; }));
    }
}

TEST_CASE("choosing another device keeps the counts, including underruns") {
    House house;
    house.keeper.start("one", house.now);
    REQUIRE(house.untilState(Kind::playing));
    house.drink(2);
    house.script->ears.underrun();
    CHECK(house.keeper.state().underruns == 1);
    house.keeper.choose("two", house.now);
    REQUIRE(house.until([&] { return house.keeper.state().deviceName == "scripted two"; }));
    house.drink(1);
    CHECK(house.host->rendered() == 2880);
    CHECK(house.keeper.state().underruns == 1);
    house.keeper.start("one", house.now);
    CHECK(house.keeper.state().underruns == 0);
}

TEST_CASE("after stop nobody renders") {
    House house;
    house.script->opens = Opening::Kind::noDevice;
    house.keeper.start("", house.now);
    REQUIRE(house.untilState(Kind::silent));
    REQUIRE(house.until([&] { return house.host->rendered() > 0; }));
    house.keeper.stop();
    const auto frames = house.renderer->frames;
    house.pass(Supervisor::second);
    CHECK(house.renderer->frames == frames);
    CHECK(house.keeper.state().kind == Kind::starting);
}
