// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/virtual/virtual_drill.h"

#include "practice/drill/drill_reader.h"
#include "practice/virtual/virtual_world.h"

#include <algorithm>
#include <array>
#include <deque>

namespace piolo::practice {

namespace {

constexpr std::size_t block = 480;
constexpr std::uint64_t renderedAhead = virtualRate / 10; // as a sound device would have it
constexpr std::uint64_t mostSamples = std::uint64_t{virtualRate} * 3600;
constexpr int flushMillis = 30'000;

class VirtualDrill {
public:
    VirtualDrill(PracticeBook& book, const std::shared_ptr<VirtualTime>& time, const std::string& script)
        : book_(book), time_(time), sound_(time), player_(script, virtualRate),
          reader_(book, sound_, engine_, [this](const DrillNote& note) { take(note); }) {
        engine_.prepare({virtualRate}, static_cast<int>(block));
    }

    VirtualDrillResult play(const PassageRecord& record) {
        const Id id = record.passage.id;
        result_.standing = record.standing;
        reader_.expect({id, record.passage.music.firstBar});
        engine::Command start;
        start.kind = engine::Command::Kind::start;
        start.plan = engine::planOf(record.passage, record.standing, book_.notebook().settings());
        engine_.send(start);
        while (!stopped_ && result_.sound.size() < mostSamples) renderBlock();
        result_.saved = book_.flush(flushMillis);
        result_.notebook = book_.notebook().passage(id)->standing;
        return std::move(result_);
    }

private:
    void renderBlock() {
        std::array<float, block> samples{};
        engine_.render(samples);
        result_.sound.insert(result_.sound.end(), samples.begin(), samples.end());
        time_->advanceTo(engine_.rendered());
        reader_.poll();
        listen();
        pressKeys();
        if (player_.isDone() && presses_.empty() && !stopSent_) stop();
    }

    void listen() {
        for (; !coming_.empty() && coming_.front().sample <= engine_.rendered(); coming_.pop_front())
            if (const auto press = player_.hear(coming_.front())) presses_.push_back(*press);
    }

    void pressKeys() {
        while (!presses_.empty() && engine_.rendered() >= presses_.front() + renderedAhead) {
            engine::Command miss;
            miss.kind = engine::Command::Kind::miss;
            miss.sample = presses_.front();
            engine_.send(miss);
            presses_.pop_front();
        }
    }

    void stop() {
        engine::Command command;
        command.kind = engine::Command::Kind::stop;
        command.sample = engine_.rendered();
        stopSent_ = engine_.send(command);
    }

    void take(const DrillNote& note) {
        using Kind = engine::Event::Kind;
        const engine::Event& event = note.event;
        coming_.push_back(event);
        if (note.fact) book_.adopt(*note.fact);
        if (event.kind == Kind::stopped) stopped_ = true;
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
    engine::DrillEngine engine_;
    DrillReader reader_;
    std::deque<engine::Event> coming_; // decided, not audible yet
    std::deque<std::uint64_t> presses_;
    VirtualDrillResult result_;
    bool stopSent_ = false;
    bool stopped_ = false;
};

void openDay(PracticeBook& book, Id passage) {
    const auto opening = book.notebook().opening(passage, book.today());
    if (opening) book.record(TempoFact{passage, *opening, Reason::newDay});
}

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
    openDay(book, found.front());
    VirtualDrill drill(book, time, script);
    return drill.play(*book.notebook().passage(found.front()));
}

} // namespace piolo::practice
