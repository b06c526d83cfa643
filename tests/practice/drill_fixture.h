// SPDX-License-Identifier: GPL-3.0-or-later
// A practice folder of its own, the engine in virtual time, and a drill using both.
#pragma once

#include "../files/kept_files.h"
#include "journal/folder/practice_folder.h"
#include "practice/drill/drill_control.h"
#include "virtual_sound.h"

#include <doctest/doctest.h>

#include <QCoreApplication>
#include <QTemporaryDir>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace piolo::test {

/// The wall clock follows the rendered sound; a test may move it forward.
class TestClock final : public journal::Clock {
public:
    explicit TestClock(const engine::DrillEngine& engine) : engine_(engine) {}
    Timestamp now() override {
        return {base + static_cast<std::int64_t>(engine_.rendered() / (VirtualSound::rate / 1000)), 0};
    }
    std::int64_t base = 1'772'352'000'000; // 2026-03-01T08:00:00Z

private:
    const engine::DrillEngine& engine_;
};

inline constexpr const char* testDevice = "0123456789abcdef0123456789abcdef";

/// True for that bar and beat within two blocks of half the beat at 84 BPM.
[[nodiscard]] inline bool isInTheMiddleOf(const Spot& spot, std::int32_t bar, std::int32_t beat) {
    return spot.bar == bar && spot.beat == beat && std::abs(spot.part - 500) <= 28;
}

class DrillFixture {
public:
    explicit DrillFixture(std::optional<Passage> passage = {}) {
        REQUIRE(scratch.isValid());
        openBook();
        openDrill();
        passageId = book->newId();
        Passage made = passage.value_or(usual());
        book->record(PassageFact{passageId, made.title, made.music, made.tempi});
        control->open(passageId);
    }

    /// Four bars of 4/4 from 84 to 96, with one bar of count-in: at 120 BPM a cycle would take 11 s.
    static Passage usual() {
        Passage passage;
        passage.title.name = "River Suite, II";
        passage.music.subdivision = 4;
        passage.music.firstBar = 41;
        passage.music.landing = false;
        passage.tempi.start = Tempo::bpm(84);
        passage.tempi.rule.target = Tempo::bpm(96);
        return passage;
    }

    /// Renders, reads and shows in steps of 10 ms.
    void play(double seconds) {
        for (int block = 0; block < static_cast<int>(seconds * 100); ++block) step();
    }
    /// Plays until an event of that kind is decided, which is then `found`; false after ten minutes without
    /// one.
    bool playUntil(engine::Event::Kind kind) {
        const auto before = notes.size();
        for (int block = 0; block < 60'000; ++block) {
            step();
            for (auto at = before; at < notes.size(); ++at) {
                if (notes[at].event.kind != kind) continue;
                found = notes[at].event;
                return true;
            }
        }
        return false;
    }
    void step() {
        sound.render();
        session->poll();
        control->tick();
    }
    /// Starts the drill and misses that many runs.
    void missRuns(int misses) {
        press();
        for (int miss = 0; miss < misses; ++miss) {
            REQUIRE(playUntil(engine::Event::Kind::runBegan));
            play(0.5);
            press();
            play(0.5);
        }
        play(1.0);
    }
    /// The player presses the key for a miss now.
    void press() { control->strike(control->nowNanos()); }

    [[nodiscard]] const PassageRecord& record() const { return *book->notebook().passage(passageId); }
    [[nodiscard]] Standing standing() const { return record().standing; }
    template <typename Body>
    [[nodiscard]] std::vector<Body> onDisk() {
        REQUIRE(book->flush(10'000));
        const auto contents = journal::readFolder(folder(), testDevice);
        REQUIRE(contents);
        std::vector<Body> bodies;
        for (const Fact& fact : contents->facts)
            if (const auto* body = std::get_if<Body>(&fact.body)) bodies.push_back(*body);
        return bodies;
    }
    [[nodiscard]] std::string folder() const { return scratch.filePath("folder").toStdString(); }
    [[nodiscard]] std::string state() const { return scratch.filePath("state").toStdString(); }

    QTemporaryDir scratch;
    KeptFiles kept{scratch.path().toStdString()};
    std::shared_ptr<engine::DrillEngine> engine = std::make_shared<engine::DrillEngine>();
    VirtualSound sound{engine};
    std::shared_ptr<TestClock> clock = std::make_shared<TestClock>(*engine);
    std::unique_ptr<practice::PracticeBook> book;
    std::unique_ptr<practice::DrillSession> session;
    std::unique_ptr<practice::DrillControl> control;
    std::vector<practice::DrillNote> notes;
    engine::Event found;
    Id passageId;

private:
    void openBook() {
        journal::JournalPorts ports;
        ports.clock = clock;
        auto opened = practice::PracticeBook::open({folder(), testDevice, state()}, std::move(ports));
        REQUIRE(opened);
        book = std::move(opened).value();
    }
    void openDrill() {
        session = std::make_unique<practice::DrillSession>(*book, sound, engine,
                                                           practice::DrillSession::Reading::byHand);
        control = std::make_unique<practice::DrillControl>(*book, sound, *session);
        QObject::connect(session.get(), &practice::DrillSession::noted,
                         [this](const practice::DrillNote& note) { notes.push_back(note); });
    }
};

} // namespace piolo::test
