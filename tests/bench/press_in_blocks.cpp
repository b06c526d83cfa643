// SPDX-License-Identifier: GPL-3.0-or-later
// Key presses between the blocks of a device, in virtual time: `press_in_blocks BLOCK PRESSES SEED`. Each
// press falls on a random sample of the sounding block, and the engine receives it with the next block.
// Prints, in samples: the mean and the longest wait from a press that starts the drill to its first click;
// the number of presses for a miss that did not take effect at the first pulse not yet rendered; and the
// longest wait for that pulse beyond the block.
#include "engine/drill/drill_engine.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <span>
#include <vector>

namespace {

using namespace piolo;
using namespace piolo::engine;

constexpr SampleRate rate{48'000};
constexpr std::uint64_t pulse = 3'428; // rounded down: septuplets at 120 BPM

DrillPlan septuplets() {
    DrillPlan plan;
    plan.bars = 64;
    plan.subdivision = 7;
    plan.countInBars = 0;
    plan.rule.target = Tempo::bpm(160);
    plan.standing = {Tempo::bpm(120), 0};
    return plan;
}

/// An engine whose blocks are pulled one by one.
class Device {
public:
    explicit Device(std::size_t block) : block_(block) {
        engine_.prepare(rate, static_cast<int>(block));
        Mix mix;
        mix.voice = Voice::impulse;
        send({.kind = Command::Kind::setMix, .mix = mix});
    }
    void send(const Command& command) { engine_.send(command); }
    [[nodiscard]] std::uint64_t now() const { return engine_.rendered(); }
    [[nodiscard]] std::size_t blockFrames() const { return block_.size(); }
    /// Renders the next block and keeps its events.
    std::span<const float> take() {
        engine_.render(block_);
        Event event;
        while (engine_.read(event)) events_.push_back(event);
        return block_;
    }
    /// Renders blocks up to the first sound and returns its sample.
    std::uint64_t takeToSound() {
        for (;;) {
            const auto begin = now();
            const auto block = take();
            const auto found =
                std::find_if(block.begin(), block.end(), [](float value) { return value != 0.0F; });
            if (found != block.end()) return begin + static_cast<std::uint64_t>(found - block.begin());
        }
    }
    /// The sample at which the most recent run ended by a press ended.
    [[nodiscard]] std::uint64_t runEnd() const {
        const auto ended = std::find_if(events_.rbegin(), events_.rend(), [](const Event& event) {
            return event.kind == Event::Kind::runEnded;
        });
        return ended == events_.rend() ? 0 : ended->sample;
    }
    void forget() { events_.clear(); }

private:
    DrillEngine engine_;
    std::vector<float> block_;
    std::vector<Event> events_;
};

struct Waits {
    std::uint64_t sum = 0;
    std::uint64_t longest = 0;

    void add(std::uint64_t wait) {
        sum += wait;
        longest = std::max(longest, wait);
    }
};

/// A press on a random sample of the sounding block.
std::uint64_t pressIn(const Device& device, std::mt19937& random) {
    return device.now() - device.blockFrames() + random() % device.blockFrames();
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 4) return 2;
    const auto presses = std::strtoul(argv[2], nullptr, 10);
    std::mt19937 random(static_cast<std::mt19937::result_type>(std::strtoul(argv[3], nullptr, 10)));
    Device device(std::strtoul(argv[1], nullptr, 10));
    Waits starts;
    Waits pulses;
    unsigned long late = 0;
    for (unsigned long i = 0; i < presses; ++i) {
        device.take();
        const auto press = pressIn(device, random);
        device.send({.kind = Command::Kind::start, .plan = septuplets()});
        starts.add(device.takeToSound() - press);
        for (auto blocks = 1 + random() % 40; blocks > 0; --blocks) device.take();
        device.forget();
        const auto heard = device.now();
        device.send({.kind = Command::Kind::miss, .sample = pressIn(device, random)});
        device.take();
        const auto end = device.runEnd();
        late += end < heard || end - heard > pulse ? 1 : 0;
        pulses.add(end - heard);
        device.send({.kind = Command::Kind::stop});
        device.take();
    }
    std::printf("%.1f %llu %lu %llu\n", static_cast<double>(starts.sum) / static_cast<double>(presses),
                static_cast<unsigned long long>(starts.longest), late,
                static_cast<unsigned long long>(pulses.longest));
    return 0;
}
