// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_bindings.h"

#include <doctest/doctest.h>

#include <QCoreApplication>
#include <QElapsedTimer>

#include <deque>

using namespace piolo;
using namespace piolo::models;

namespace {

constexpr std::int64_t ms = 1'000'000;

class FakeMidi final : public practice::MidiPort {
public:
    bool look() override {
        ++looks;
        isOpen = sequencer;
        return sequencer;
    }
    void close() override { isOpen = false; }
    [[nodiscard]] std::vector<std::string> inputs() const override {
        return isOpen ? plugged : std::vector<std::string>();
    }
    void onMessage(std::function<void()> heard) override { heard_ = std::move(heard); }
    bool take(practice::MidiMoment& moment) override {
        if (waiting.empty()) return false;
        moment = waiting.front();
        waiting.pop_front();
        return true;
    }
    void send(MidiPress::Way way, std::int64_t millis, int number = 64) {
        if (!isOpen) return;
        const auto kind =
            way == MidiPress::Way::tap ? MidiSwitch::Kind::program : MidiSwitch::Kind::controller;
        waiting.push_back({{{kind, number, 1}, way}, millis * ms});
        heard_();
        QCoreApplication::processEvents();
    }

    bool sequencer = true;
    bool isOpen = false;
    int looks = 0;
    std::vector<std::string> plugged{"Foot switch"};
    std::deque<practice::MidiMoment> waiting;

private:
    std::function<void()> heard_;
};

struct Feet {
    explicit Feet(const KeyBindings::Keys& saved)
        : bindings(
              saved, [this](const KeyBindings::Keys& keys) { stored = keys; },
              [] { return std::int64_t{0}; }) {
        QObject::connect(&bindings.listener(), &KeyListener::pressed, [this](KeyAction action, qint64 nanos) {
            reported << QString("%1 %2")
                            .arg(QString::fromStdString(std::string(infoOf(action).name)))
                            .arg(nanos / ms);
        });
        QObject::connect(&bindings.listener(), &KeyListener::pedalDown,
                         [this](qint64 nanos) { reported << QString("down %1").arg(nanos / ms); });
        QObject::connect(&bindings.listener(), &KeyListener::pedalUp,
                         [this](qint64 nanos) { reported << QString("up %1").arg(nanos / ms); });
        bindings.listener().setScope(KeyScope::drill);
        bindings.watch(switches);
    }
    FakeMidi midi;
    MidiSwitches switches{midi};
    KeyBindings::Keys stored;
    KeyBindings bindings;
    QStringList reported;
};

using Way = MidiPress::Way;

KeyBindings::Keys bound(const char* action, const char* keys) { return {{action, keys}}; }

} // namespace

TEST_CASE("MIDI is looked for only while a switch is bound or waited for") {
    Feet feet(KeyBindings::Keys{});
    CHECK(feet.midi.looks == 0);
    feet.bindings.capture("mark");
    CHECK(feet.midi.isOpen);
    feet.bindings.giveUp();
    CHECK_FALSE(feet.midi.isOpen);
    Feet used(bound("mark", "Space, midi cc 64 ch 1"));
    CHECK(used.midi.isOpen);
    used.bindings.restore();
    CHECK_FALSE(used.midi.isOpen);
}

TEST_CASE("a MIDI switch is bound by pressing it, kept as text, and marks at its own moment") {
    Feet feet(KeyBindings::Keys{});
    feet.bindings.captureMidi("mark");
    CHECK(feet.bindings.midiLine() == "Listening to Foot switch. Press the switch.");
    feet.midi.send(Way::down, 1000);
    CHECK(feet.bindings.capturing().isEmpty());
    CHECK(feet.bindings.midiLine().isEmpty());
    CHECK(feet.bindings.shown(KeyAction::mark) == "MIDI: controller 64, channel 1, Space, PgDown");
    CHECK(feet.stored.at("mark") == "midi cc 64 ch 1, Space, PgDown");
    feet.midi.send(Way::up, 1100);
    feet.midi.send(Way::down, 2000);
    feet.midi.send(Way::down, 2000, 65); // another controller
    CHECK(feet.reported == QStringList{"mark 2000"});
    Feet next(feet.stored);
    next.midi.send(Way::down, 500);
    CHECK(next.reported == QStringList{"mark 500"});
}

TEST_CASE("a controller that moves on above the middle, or bounces, marks once; a program change each time") {
    Feet feet(bound("mark", "midi cc 64 ch 1, midi program 64 ch 1"));
    for (const int at : {1000, 1010, 1020}) feet.midi.send(Way::down, at); // 65, 90, 127
    feet.midi.send(Way::up, 1100);
    feet.midi.send(Way::down, 1120); // the contact bounced
    CHECK(feet.reported == QStringList{"mark 1000"});
    feet.midi.send(Way::tap, 2000);
    feet.midi.send(Way::tap, 2500);
    feet.midi.send(Way::tap, 2510); // too soon for a foot
    CHECK(feet.reported == QStringList{"mark 1000", "mark 2000", "mark 2500"});
}

TEST_CASE("a MIDI switch can be the single pedal: its moves are reported with their times") {
    Feet feet(bound("pedal", "midi cc 64 ch 1"));
    feet.midi.send(Way::down, 1000);
    feet.midi.send(Way::up, 1900);
    CHECK(feet.reported == QStringList{"down 1000", "up 1900"});
}

TEST_CASE("a system without MIDI is reported when MIDI is requested, not before") {
    Feet feet(bound("mark", "Space, midi cc 64 ch 1"));
    feet.midi.sequencer = false;
    feet.switches.look();
    CHECK(feet.bindings.midiLine().isEmpty());
    feet.bindings.capture("back");
    CHECK(feet.bindings.midiLine().isEmpty());
    feet.bindings.captureMidi("back");
    CHECK(feet.bindings.midiLine().startsWith("MIDI is not available"));
    CHECK(feet.bindings.capturing().isEmpty());
}

TEST_CASE("an input that is plugged in later is reported and received") {
    Feet feet(KeyBindings::Keys{});
    feet.midi.plugged.clear();
    feet.bindings.captureMidi("mark");
    CHECK(feet.bindings.midiLine().startsWith("No MIDI input is connected."));
    feet.midi.plugged = {"Foot switch"};
    feet.switches.look();
    CHECK(feet.bindings.midiLine().contains("Foot switch"));
}
