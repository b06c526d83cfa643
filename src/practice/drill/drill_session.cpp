// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drill/drill_session.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace piolo::practice {

namespace {

constexpr std::chrono::milliseconds readEvery{4};
/// While nothing sounds and nothing was sent for a while.
constexpr std::chrono::milliseconds restingEvery{250};
constexpr std::chrono::seconds awakeFor{2};
constexpr std::size_t mostMade = 16; // more presses than can be withdrawn at one time

bool movesStanding(engine::Event::Kind kind) {
    using Kind = engine::Event::Kind;
    return kind == Kind::runEnded || kind == Kind::lateMiss || kind == Kind::tempoMoved ||
           kind == Kind::adopted;
}

bool asksForFold(engine::Event::Kind kind) {
    using Kind = engine::Event::Kind;
    return kind == Kind::runEnded || kind == Kind::lateMiss || kind == Kind::adoptRefused;
}

} // namespace

DrillSession::DrillSession(PracticeBook& book, SoundPort& sound, std::shared_ptr<engine::DrillEngine> engine,
                           Reading reading, QObject* parent)
    : QObject(parent), book_(book), sound_(sound), engine_(std::move(engine)),
      reader_(book, sound, *engine_, [this](DrillNote note) {
          if (notes_.push(std::move(note))) emit notesWait();
      }) {
    // With a reader thread, notes are queued for the window thread; by hand there is only one thread.
    connect(this, &DrillSession::notesWait, this, &DrillSession::takeNotes,
            reading == Reading::ownThread ? Qt::QueuedConnection : Qt::DirectConnection);
    if (reading == Reading::ownThread) thread_ = std::thread([this] { readOn(); });
}

DrillSession::~DrillSession() {
    {
        const std::lock_guard lock(waking_);
        ending_ = true;
    }
    awake_.notify_one();
    if (thread_.joinable()) thread_.join();
}

void DrillSession::readOn() {
    auto rest = std::chrono::steady_clock::now() + awakeFor;
    std::unique_lock lock(waking_);
    while (!ending_) {
        const bool sent = std::exchange(sent_, false);
        lock.unlock();
        const bool active = reader_.poll() || reader_.sounding() || sent;
        const auto now = std::chrono::steady_clock::now();
        if (active) rest = now + awakeFor;
        lock.lock();
        // A command that comes while it rests does not wait for the next look.
        if (now < rest)
            awake_.wait_for(lock, readEvery, [this] { return ending_; });
        else
            awake_.wait_for(lock, restingEvery, [this] { return ending_ || sent_; });
    }
    lock.unlock();
    reader_.poll();
}

void DrillSession::wakeReader() {
    {
        const std::lock_guard lock(waking_);
        sent_ = true;
    }
    awake_.notify_one();
}

bool DrillSession::give(const engine::Command& command) {
    if (!engine_->send(command)) return false;
    wakeReader();
    return true;
}

void DrillSession::poll() { reader_.poll(); }

void DrillSession::catchUp() {
    sendWaiting();
    notePulses();
    takeNotes();
}

bool DrillSession::begin(const Passage& passage, Standing standing, RunKind kind, const engine::Turn& turn) {
    engine::Command command;
    command.kind = engine::Command::Kind::start;
    command.plan = engine::planOf(passage, standing, book_.notebook().settings());
    command.plan.apart = kind != RunKind::run;
    command.plan.once = kind == RunKind::attempt;
    command.plan.clickless = kind == RunKind::silent;
    command.plan.turn = turn;
    reader_.expect({passage.id, passage.music.firstBar, kind});
    // Waiting commands belong to the previous drill and go first.
    if (!sendWaiting() || !give(command)) {
        reader_.forget();
        noteWaited();
        return false;
    }
    passage_ = passage.id;
    apart_ = command.plan.apart;
    standing_ = standing;
    active_ = true;
    return true;
}

std::uint64_t DrillSession::playNotes(const Passage& passage, Tempo tempo, bool click) {
    engine::PlaybackScore score = engine::playbackOf(passage, tempo);
    if (score.notes.empty()) return 0;
    score.click = click;
    return play(score);
}

std::uint64_t DrillSession::play(const engine::PlaybackScore& score) {
    if (active_) return 0;
    const std::uint64_t number = sendWaiting() ? engine_->hear(score) : 0;
    if (number == 0)
        noteWaited();
    else
        wakeReader();
    return number;
}

void DrillSession::sendMark(engine::Command::Kind kind, std::int64_t nanos) {
    engine::Command command;
    command.kind = kind;
    command.sample = sound_.audibleAt(nanos);
    send(command);
}

void DrillSession::send(const engine::Command& command) {
    if (sendWaiting() && give(command)) return;
    waiting_.push_back(command);
    noteWaited();
}

bool DrillSession::sendWaiting() {
    while (!waiting_.empty() && give(waiting_.front())) waiting_.pop_front();
    return waiting_.empty();
}

void DrillSession::noteWaited() {
    if (++waited_ == 1) emit fellBehind();
}

void DrillSession::notePulses() {
    if (std::exchange(pulsesLeftOut_, engine_->pulsesNotSent()) == 0 && pulsesLeftOut_ > 0) emit fellBehind();
}

std::uint64_t DrillSession::miss(std::int64_t nanos) {
    engine::Command command;
    command.kind = engine::Command::Kind::miss;
    command.sample = sound_.audibleAt(nanos);
    command.press = ++presses_;
    send(command);
    return presses_;
}

void DrillSession::withdraw(std::uint64_t press) {
    engine::Command command;
    command.kind = engine::Command::Kind::withdraw;
    command.press = press;
    send(command);
}

void DrillSession::clean(std::int64_t nanos) { sendMark(engine::Command::Kind::clean, nanos); }

void DrillSession::stop() { sendMark(engine::Command::Kind::stop, sound_.nowNanos()); }

void DrillSession::resume() { sendMark(engine::Command::Kind::resume, sound_.nowNanos()); }

void DrillSession::setMix(const engine::Mix& mix) {
    engine::Command command;
    command.kind = engine::Command::Kind::setMix;
    command.mix = mix;
    send(command);
}

void DrillSession::reconcile() {
    if (!active_ || apart_ || book_.readOnly()) return;
    const PassageRecord* record = book_.notebook().passage(passage_);
    if (record != nullptr && record->standing != standing_) adopt(record->standing);
}

void DrillSession::adopt(Standing standing) {
    engine::Command command;
    command.kind = engine::Command::Kind::adopt;
    command.standing = standing;
    command.runsEnded = runsEnded_;
    send(command);
}

void DrillSession::keepMade(const DrillNote& note) {
    if (!note.fact || note.event.press == 0) return;
    made_[note.event.press] = BackFact{passageOf(note.fact->body), note.fact->id};
    if (made_.size() > mostMade) made_.erase(made_.begin());
}

// The engine answers in order, so everything that the press caused has already arrived.
void DrillSession::takeBackMade(std::uint64_t press) {
    const auto made = made_.find(press);
    if (made != made_.end() && !book_.readOnly()) {
        book_.record(made->second);
        reconcile();
    }
    emit withdrawn(press);
}

// A late miss of the last run of the turn before: the passage that is played now stands where it stood.
bool DrillSession::isOfAnotherPassage(const DrillNote& note) const {
    return note.fact && passageOf(note.fact->body) != passage_;
}

void DrillSession::takeNotes() {
    for (const DrillNote& note : notes_.takeAll()) take(note);
}

void DrillSession::take(const DrillNote& note) {
    const engine::Event& event = note.event;
    runsEnded_ = std::max(runsEnded_, event.runsEnded);
    if (note.fact && !book_.readOnly()) book_.adopt(*note.fact);
    keepMade(note);
    if (movesStanding(event.kind) && !isOfAnotherPassage(note)) standing_ = event.after;
    if (event.kind == engine::Event::Kind::withdrawn) takeBackMade(event.press);
    if (asksForFold(event.kind)) reconcile();
    if (event.kind == engine::Event::Kind::stopped) active_ = false;
    emit noted(note);
}

} // namespace piolo::practice
