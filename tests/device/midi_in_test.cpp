// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/midi/midi_in.h"

#include "device/sound/sound_out.h"

#include <rtmidi/RtMidi.h>

#include <doctest/doctest.h>

#include <chrono>
#include <map>
#include <thread>

using namespace piolo::device;
using piolo::MidiPress;
using piolo::MidiSwitch;
using piolo::practice::MidiMoment;
using Bytes = std::vector<std::uint8_t>;
using Kind = MidiSwitch::Kind;
using Way = MidiPress::Way;

namespace {

/// What is plugged in, and who receives from it.
struct Plugs {
    std::map<std::string, MidiBackend::Heard> listening;
    std::vector<std::string> there;
    std::vector<std::string> stuck; // inputs that cannot be opened
    bool sequencer = true;
    int opened = 0;

    void send(const std::string& name, const Bytes& bytes) { listening.at(name)(bytes); }
};

class FakeInput final : public MidiInput {
public:
    FakeInput(Plugs& plugs, std::string name) : plugs_(plugs), name_(std::move(name)) {}
    ~FakeInput() override { plugs_.listening.erase(name_); }

private:
    Plugs& plugs_;
    std::string name_;
};

class FakeDoor final : public MidiBackend {
public:
    explicit FakeDoor(Plugs& plugs) : plugs_(plugs) {}
    bool isThere() override { return plugs_.sequencer; }
    std::vector<std::string> inputs() override { return plugs_.there; }
    std::unique_ptr<MidiInput> open(const std::string& name, Heard heard) override {
        for (const auto& stuck : plugs_.stuck)
            if (stuck == name) return nullptr;
        ++plugs_.opened;
        plugs_.listening[name] = std::move(heard);
        return std::make_unique<FakeInput>(plugs_, name);
    }

private:
    Plugs& plugs_;
};

struct Listener {
    Listener() {
        in.onMessage([this] { ++woken; });
    }
    std::vector<MidiPress> all() {
        std::vector<MidiPress> found;
        for (MidiMoment moment; in.take(moment);) found.push_back(moment.press);
        return found;
    }
    Plugs plugs;
    std::int64_t now = 5'000;
    int woken = 0;
    MidiIn in{std::make_unique<FakeDoor>(plugs), [this] { return now; }};
};

} // namespace

TEST_CASE("all inputs are received, in order and with the times of their switches") {
    Listener listener;
    listener.plugs.there = {"left", "right"};
    REQUIRE(listener.in.look());
    CHECK(listener.in.inputs() == std::vector<std::string>{"left", "right"});
    listener.plugs.send("right", {0x90, 60, 1});
    listener.now = 6'000;
    listener.plugs.send("left", {0xC0, 5});
    CHECK(listener.woken == 1); // the second move waits together with the first
    MidiMoment moment;
    REQUIRE(listener.in.take(moment));
    CHECK(moment == MidiMoment{{{Kind::note, 60, 1}, Way::down}, 5'000});
    REQUIRE(listener.in.take(moment));
    CHECK(moment == MidiMoment{{{Kind::program, 5, 1}, Way::tap}, 6'000});
    CHECK_FALSE(listener.in.take(moment));
    listener.plugs.send("left", {0xC0, 6});
    CHECK(listener.woken == 2);
}

TEST_CASE("an input that comes later is heard at the next look; one that went is let go; one that stays is "
          "not opened again") {
    Listener listener;
    REQUIRE(listener.in.look());
    CHECK(listener.in.inputs().empty());
    listener.plugs.there = {"left"};
    listener.in.look();
    listener.plugs.there = {"left", "right"};
    listener.in.look();
    listener.plugs.send("right", {0x90, 60, 1});
    CHECK(listener.all().size() == 1);
    CHECK(listener.plugs.opened == 2);
    listener.plugs.there = {"right"};
    listener.in.look();
    CHECK_FALSE(listener.plugs.listening.contains("left"));
    CHECK(listener.in.inputs() == std::vector<std::string>{"right"});
}

TEST_CASE("an input that cannot be opened is retried at every look") {
    Listener listener;
    listener.plugs.there = {"left"};
    listener.plugs.stuck = {"left"};
    CHECK(listener.in.look());
    CHECK(listener.in.inputs().empty());
    listener.plugs.stuck.clear();
    listener.in.look();
    CHECK(listener.in.inputs().size() == 1);
}

TEST_CASE("a system without MIDI says so, and open inputs are closed") {
    Listener listener;
    listener.plugs.there = {"left"};
    listener.in.look();
    listener.plugs.sequencer = false;
    CHECK_FALSE(listener.in.look());
    CHECK(listener.plugs.listening.empty());
}

TEST_CASE("moves that nobody takes are dropped, the newest first") {
    Listener listener;
    listener.plugs.there = {"left"};
    listener.in.look();
    listener.plugs.send("left", {0xC0, 7});
    for (std::size_t i = 0; i < 2 * MidiIn::mostWaiting; ++i) listener.plugs.send("left", {0xC0, 5});
    const auto kept = listener.all();
    CHECK(kept.size() == MidiIn::mostWaiting);
    CHECK(kept.front() == MidiPress{{Kind::program, 7, 1}, Way::tap});
    CHECK(kept.back() == MidiPress{{Kind::program, 5, 1}, Way::tap});
}

TEST_CASE("messages that no switch sends wake nobody and take no room in the queue") {
    Listener listener;
    listener.plugs.there = {"left"};
    listener.in.look();
    for (std::size_t i = 0; i < 2 * MidiIn::mostWaiting; ++i) {
        listener.plugs.send("left", {0xF8});                         // a clock
        listener.plugs.send("left", {0xF0, 1, 2, 3, 4, 0xF7});       // longer than any switch sends
        listener.plugs.send("left", {0xB0, 64, 127, 0xB0, 64, 127}); // not a single message
    }
    CHECK(listener.woken == 0);
    listener.plugs.send("left", {0xB0, 64, 127});
    CHECK(listener.woken == 1);
    CHECK(listener.all() == std::vector<MidiPress>{{{Kind::controller, 64, 1}, Way::down}});
}

TEST_CASE("a press on a virtual MIDI port is heard") {
    const auto door = systemMidi();
    if (!door->isThere()) {
        CHECK(door->inputs().empty());
        MESSAGE("skipped: this kernel has no MIDI sequencer");
        return;
    }
    RtMidiOut pedal(RtMidi::LINUX_ALSA, "Foot switch");
    pedal.openVirtualPort("switch");
    MidiIn in(systemMidi(), monotonicNanos);
    const std::int64_t before = monotonicNanos();
    REQUIRE(in.look());
    const Bytes press{0xB0, 64, 127};
    MidiMoment moment;
    bool heard = false;
    for (int tries = 0; tries < 100 && !heard; ++tries) {
        pedal.sendMessage(&press);
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
        heard = in.take(moment);
    }
    REQUIRE(heard);
    CHECK(moment.press == MidiPress{{Kind::controller, 64, 1}, Way::down});
    CHECK(moment.nanos > before);
    CHECK(moment.nanos <= monotonicNanos());
}
