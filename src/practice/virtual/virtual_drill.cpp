// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/virtual/virtual_drill.h"

#include "practice/drill/drill_control.h"
#include "practice/virtual/virtual_world.h"

#include <algorithm>
#include <array>
#include <deque>
#include <utility>

namespace piolo::practice {

namespace {

constexpr std::size_t block = 480;
constexpr std::uint64_t renderedAhead = virtualRate / 10; // like a real sound device
constexpr std::uint64_t mostSamples = std::uint64_t{virtualRate} * 3600;
constexpr int flushMillis = 30'000;

/// The window's session and control without a reader thread: one thread renders, reads and plays.
class VirtualDrill {
public:
    VirtualDrill(PracticeBook& book, const std::shared_ptr<VirtualTime>& time, const std::string& script)
        : book_(book), time_(time), sound_(time), player_(script, virtualRate),
          session_(book, sound_, engine_, DrillSession::Reading::byHand), control_(book, sound_, session_) {
        engine_->prepare({virtualRate}, static_cast<int>(block));
        QObject::connect(&session_, &DrillSession::noted, [this](const DrillNote& note) { keep(note); });
        QObject::connect(&control_, &DrillControl::heard,
                         [this](const engine::Event& event) { listen(event); });
    }

    VirtualDrillResult play(Id passage) {
        control_.open(passage);
        control_.begin(RunKind::run);
        result_.standing = control_.standing();
        while (control_.isBusy() && result_.sound.size() < mostSamples) renderBlock();
        result_.saved = book_.flush(flushMillis);
        result_.notebook = book_.notebook().passage(passage)->standing;
        return std::move(result_);
    }

private:
    void renderBlock() {
        std::array<float, block> samples{};
        engine_->render(samples);
        result_.sound.insert(result_.sound.end(), samples.begin(), samples.end());
        time_->advanceTo(engine_->rendered());
        session_.poll();
        control_.tick();
        pressKeys();
        if (player_.isDone() && presses_.empty() && !std::exchange(stopped_, true)) control_.stop();
    }

    void listen(const engine::Event& event) {
        if (const auto press = player_.hear(event)) presses_.push_back(*press);
    }

    void pressKeys() {
        for (; !presses_.empty() && engine_->rendered() >= presses_.front() + renderedAhead;
             presses_.pop_front())
            control_.strike(time_->nanosOf(presses_.front()));
    }

    void keep(const DrillNote& note) {
        using Kind = engine::Event::Kind;
        const engine::Event& event = note.event;
        if (event.kind == Kind::runEnded && note.fact)
            result_.runs.push_back({event.run, note.fact->id, event.tempo, event.mark, false, event.after});
        if (event.kind == Kind::lateMiss) markLate(event);
        if (event.kind == Kind::runEnded || event.kind == Kind::lateMiss) result_.standing = event.after;
    }

    void markLate(const engine::Event& event) {
        for (DrilledRun& run : result_.runs) {
            if (run.number != event.run) continue;
            run.mark = Mark::missed;
            run.late = true;
            run.after = event.after;
        }
    }

    PracticeBook& book_;
    std::shared_ptr<VirtualTime> time_;
    VirtualSound sound_;
    ScriptedPlayer player_;
    std::shared_ptr<engine::DrillEngine> engine_ = std::make_shared<engine::DrillEngine>();
    DrillSession session_;
    DrillControl control_;
    std::deque<std::uint64_t> presses_;
    VirtualDrillResult result_;
    bool stopped_ = false;
};

} // namespace

Result<VirtualDrillResult> drillVirtually(const journal::JournalLocation& place, const std::string& passage,
                                          const std::string& script, Timestamp start) {
    const auto time = std::make_shared<VirtualTime>(start, virtualRate);
    journal::JournalPorts ports;
    ports.clock = time;
    auto opened = PracticeBook::open(place, ports);
    if (!opened) return opened.fault();
    PracticeBook& book = **opened;
    const std::vector<Id> found = book.notebook().find(passage);
    if (found.size() != 1) return Fault{FaultNumber::noSuchPassage, {place.folder}, {passage}};
    VirtualDrill drill(book, time, script);
    return drill.play(found.front());
}

} // namespace piolo::practice
