// SPDX-License-Identifier: GPL-3.0-or-later
// render() allocates no memory, takes no lock, makes no system call, logs nothing and throws nothing.
#ifndef PIOLO_SANITIZED

#include "drill/drill_script.h"
#include "playback/playback_bench.h"

#include "engine/click/click_track.h"
#include "engine/drill/drill_engine.h"
#include "tripwire/tripwire.h"

#include <doctest/doctest.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <mutex>
#include <semaphore.h>
#include <shared_mutex>
#include <span>
#include <stdexcept>
#include <unistd.h>
#include <vector>

using namespace piolo;
using namespace piolo::engine;
using namespace piolo::tripwire;

namespace {

/// A drill that constantly gets every kind of command while its reader does not always read.
class Ordeal {
public:
    explicit Ordeal(std::uint64_t seed) : random_(seed) {
        engine_.prepare({48'000}, 4'096);
        auto passage = plainPassage();
        for (int i = 0; i < 400; ++i) passage.notes.push_back(noteAt({i, 200}, {1, 50}, 30 + i % 90));
        playback_ = playbackOf(passage, Tempo::bpm(300));
    }

    void renderBlocks(int count) noexcept {
        for (int block = 0; block < count; ++block) {
            sendSome();
            engine_.render(std::span(out_).first(anySize()));
            if (block % 250'000 < 100'000) listen(); // sometimes nobody reads for minutes
        }
        listen();
    }

    std::array<std::uint64_t, 11> sent{};
    std::uint64_t refused = 0;
    std::uint64_t reported = 0;
    std::uint64_t runsReported = 0;
    std::uint64_t playbacksReported = 0;
    std::uint64_t clicksReported = 0;
    [[nodiscard]] const DrillEngine& engine() const { return engine_; }

private:
    std::size_t anySize() noexcept {
        const auto most = random_() % 64 == 0 ? out_.size() : 300;
        return 1 + random_() % most;
    }

    void sendSome() noexcept {
        const auto count = random_() % 4096 == 0 ? 300 : random_() % 3; // sometimes more than the queue holds
        for (std::uint64_t i = 0; i < count; ++i) send();
    }

    void send() noexcept {
        auto command = anyCommand(random_, engine_.rendered(), 48'000);
        command.kind = anyKind();
        command.plan = anyPlan(random_);
        command.plan.turn = anyTurn(random_);
        command.runsEnded = runsEnded_;
        command.press = 1; // the next withdraw command withdraws it
        command.number = clicks_ += random_() % 2;
        command.click = {anyTempo(random_), 1 + static_cast<std::int32_t>(random_() % 9), 5,
                         1 + static_cast<std::int32_t>(random_() % 8)};
        const bool hears = command.kind == Command::Kind::hear;
        if (hears ? engine_.hear(playback_) != 0 : engine_.send(command))
            ++sent.at(static_cast<std::size_t>(command.kind));
        else
            ++refused;
    }

    /// Changes the mix all the time, and everything else rarely enough for runs to reach their end.
    Command::Kind anyKind() noexcept {
        using enum Command::Kind;
        const auto choice = random_() % 10'000;
        if (choice < 2) return stop;
        if (choice < 10) return start;
        if (choice < 60) return resume;
        if (choice < 65) return miss;
        if (choice < 85) return clean;
        if (choice < 95) return adopt;
        if (choice < 125) return hear;
        if (choice < 130) return withdraw;
        if (choice < 134) return endClick;
        if (choice < 180) return click;
        return choice < 200 ? adopt : setMix;
    }

    void listen() noexcept {
        for (Event event; engine_.read(event); ++reported) {
            runsEnded_ = event.runsEnded;
            if (event.kind == Event::Kind::runEnded) ++runsReported;
            if (event.kind == Event::Kind::playbackEnded) ++playbacksReported;
            if (event.kind == Event::Kind::clickEnded) ++clicksReported;
        }
    }

    Random random_;
    DrillEngine engine_;
    PlaybackScore playback_;
    std::array<float, 4'096> out_{};
    std::uint64_t runsEnded_ = 0;
    std::uint64_t clicks_ = 1;
};

} // namespace

TEST_CASE("each wire trips, and only the one that was touched") {
    std::mutex mutex;
    std::shared_mutex shared;
    sem_t semaphore;
    ::sem_init(&semaphore, 0, 1);
    CHECK(tripsOf([] {}) == Trips{});
    CHECK(tripsOf([] { delete new std::vector<int>(10); }).of(Trip::memory) == 4);
    void* volatile kept = nullptr; // otherwise the compiler removes the pair
    CHECK(tripsOf([&] { kept = std::malloc(8); }).of(Trip::memory) == 1);
    CHECK(tripsOf([&] { kept = std::realloc(kept, 80'000); }).of(Trip::memory) == 1);
    CHECK(tripsOf([&] { std::free(kept); }).of(Trip::memory) == 1);
    CHECK(tripsOf([&] { kept = std::aligned_alloc(64, 64); }).of(Trip::memory) == 1);
    std::free(kept);
    CHECK(tripsOf([&] { const std::lock_guard lock(mutex); }).of(Trip::lock) == 2);
    CHECK(tripsOf([&] { const std::shared_lock lock(shared); }).of(Trip::lock) == 2);
    CHECK(tripsOf([&] { ::sem_wait(&semaphore); }).of(Trip::lock) == 1);
    CHECK(tripsOf([] { std::fwrite("", 1, 0, stderr); }).of(Trip::log) == 1);
    const auto thrown = tripsOf([] {
        try {
            throw std::runtime_error("on purpose");
        } catch (const std::runtime_error&) {
        }
    });
    CHECK(thrown.of(Trip::exception) == 1);
    CHECK(thrown.of(Trip::lock) == 0);
    ::sem_destroy(&semaphore);
}

TEST_CASE("a system call is caught, still made, and reported by number") {
    long parent = 0;
    const auto trips = tripsOf([&] { parent = ::getppid(); });
    CHECK(trips.of(Trip::systemCall) == 1);
    CHECK(trips.firstCall == 110); // Linux, arch/x86/entry/syscalls/syscall_64.tbl: getppid
    CHECK(parent == ::getppid());
    CHECK(tripsOf([] {}).of(Trip::systemCall) == 0);
}

TEST_CASE("a million blocks of odd sizes with commands arriving all the time trip no wire") {
    const auto seed = seedOr(20'261);
    MESSAGE("seed ", seed);
    Ordeal ordeal(seed);
    const auto trips = tripsOf([&] { ordeal.renderBlocks(1'000'000); });
    INFO(textOf(trips));
    CHECK(trips == Trips{});
    for (const auto count : ordeal.sent) CHECK(count > 20);
    CHECK(ordeal.refused > 0);
    CHECK(ordeal.engine().pulsesNotSent() > 0);
    CHECK(ordeal.reported > 5'000);
    CHECK(ordeal.runsReported > 300);
    CHECK(ordeal.playbacksReported > 100);
    CHECK(ordeal.clicksReported > 100);
}

TEST_CASE("a written playback trips no wire") {
    auto passage = plainPassage();
    for (int i = 0; i < 200; ++i) passage.notes.push_back(noteAt({i, 100}, {1, 20}, 40 + i % 60));
    PlaybackTrack track(playbackOf(passage, Tempo::bpm(137)), {});
    track.prepare({48'000}, 512);
    std::array<float, 509> out{};
    const auto trips = tripsOf([&] {
        for (int block = 0; block < 2'000; ++block) track.render(out);
    });
    INFO(textOf(trips));
    CHECK(trips == Trips{});
}

TEST_CASE("a written track trips no wire") {
    ClickTrack track;
    track.subdivision = 7;
    track.stretches = {{Tempo::bpm(137), 1, true}, {Tempo::bpm(300), 40, false}};
    TrackPlayer player(track);
    player.prepare({48'000}, 512);
    std::array<float, 509> out{};
    const auto trips = tripsOf([&] {
        for (int block = 0; block < 4'000; ++block) player.render(out);
    });
    INFO(textOf(trips));
    CHECK(trips == Trips{});
}

#endif
