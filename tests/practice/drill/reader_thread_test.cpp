// SPDX-License-Identifier: GPL-3.0-or-later
// The session with its own reader thread, and the sound rendered by a third thread.
#include "../drill_fixture.h"

#include <QElapsedTimer>

#include <atomic>
#include <thread>

using namespace piolo;
using Kind = engine::Event::Kind;

namespace {

/// Renders as fast as it can until it is destroyed.
class Rendering {
public:
    explicit Rendering(test::VirtualSound& sound)
        : thread_([this, &sound] {
              while (!over_) {
                  sound.render();
                  std::this_thread::sleep_for(std::chrono::microseconds(200));
              }
          }) {}
    ~Rendering() {
        over_ = true;
        thread_.join();
    }

private:
    std::atomic<bool> over_{false};
    std::thread thread_;
};

} // namespace

TEST_CASE(
    "with the reader on its own thread every run is journalled, and each note comes once and in order") {
    test::DrillFixture fixture;
    auto engine = std::make_shared<engine::DrillEngine>();
    test::VirtualSound sound(engine);
    practice::DrillSession session(*fixture.book, sound, engine);
    practice::DrillControl control(*fixture.book, sound, session);
    std::vector<practice::DrillNote> notes;
    QObject::connect(&session, &practice::DrillSession::noted,
                     [&](const practice::DrillNote& note) { notes.push_back(note); });
    const auto ended = [&] {
        return std::count_if(notes.begin(), notes.end(),
                             [](const auto& note) { return note.event.kind == Kind::runEnded; });
    };
    control.open(fixture.passageId);
    control.begin(RunKind::run);
    QElapsedTimer clock;
    clock.start();
    {
        const Rendering rendering(sound);
        while (ended() < 3 && clock.elapsed() < 60'000) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
            control.tick();
        }
        control.stop();
        while (control.isBusy() && clock.elapsed() < 60'000) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
            control.tick();
        }
    }
    CHECK_FALSE(control.isBusy());
    CHECK(ended() >= 3);
    std::uint64_t runs = 0;
    for (const auto& note : notes)
        if (note.event.kind == Kind::runEnded) CHECK(note.event.run == ++runs);
    CHECK(fixture.onDisk<RunFact>().size() == runs);
    CHECK(fixture.record().entries.size() == runs);
}
