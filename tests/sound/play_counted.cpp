// SPDX-License-Identifier: GPL-3.0-or-later
// Plays samples that encode their own number through the default device, and writes which one it believes is
// audible: `play_counted SECONDS [BLOCK_MILLIS]`. With BLOCK_MILLIS, the window thread is blocked for that
// long, three times.
#include "device/sound/sound_out.h"

#include <QCoreApplication>
#include <QTimer>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <thread>

namespace {

using piolo::device::SoundOut;
using piolo::practice::SoundState;

// Sample n is (n mod 2^20 + 1) / 2^20: exact in float32, never 0.
class Counting final : public piolo::engine::Renderer {
public:
    void prepare(piolo::engine::SampleRate, int) override {}
    void render(std::span<float> out) noexcept override {
        for (auto& sample : out) sample = static_cast<float>(next_++ % wrap + 1) / static_cast<float>(wrap);
    }

private:
    static constexpr std::uint64_t wrap = 1U << 20U;
    std::uint64_t next_ = 0;
};

void printSound(const SoundOut& sound) {
    const auto now = piolo::device::monotonicNanos();
    std::printf("audible %lld %llu\n", static_cast<long long>(now),
                static_cast<unsigned long long>(sound.audibleAt(now)));
}

void printState(const SoundState& state) {
    static constexpr const char* names[] = {"starting", "playing", "silent", "needsRestart"};
    std::printf("state %lld %s %d %llu %s\n", static_cast<long long>(piolo::device::monotonicNanos()),
                names[static_cast<int>(state.kind)], state.rate,
                static_cast<unsigned long long>(state.underruns), state.deviceName.c_str());
    std::fflush(stdout);
}

} // namespace

int main(int argc, char** argv) {
    QCoreApplication app{argc, argv};
    const auto seconds = argc > 1 ? std::atoi(argv[1]) : 5;
    const std::chrono::milliseconds block{argc > 2 ? std::atoi(argv[2]) : 0};
    SoundOut sound{std::make_shared<Counting>()};
    sound.onChange([&] { printState(sound.state()); });
    sound.start("");
    QTimer ticking;
    QObject::connect(&ticking, &QTimer::timeout, &app, [&] { printSound(sound); });
    ticking.start(20);
    for (int turn = 1; turn <= 3 && block.count() > 0; ++turn)
        QTimer::singleShot(turn * seconds * 250, &app, [block] { std::this_thread::sleep_for(block); });
    QTimer::singleShot(seconds * 1000, &app, [&] {
        printState(sound.state());
        sound.stop();
        QCoreApplication::quit();
    });
    const auto result = QCoreApplication::exec();
    if (SoundOut::threadsLeftBehind()) {
        std::puts("left behind");
        std::fflush(stdout);
        std::quick_exit(result);
    }
    return result;
}
