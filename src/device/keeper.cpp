// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/keeper.h"

#include <chrono>
#include <thread>
#include <utility>

namespace piolo::device {
namespace {

using namespace std::chrono_literals;

constexpr auto closeWithin = 1000ms;
constexpr int cutOffMillis = 500;

} // namespace

Keeper::Keeper(std::shared_ptr<Stage> stage, SoundThread& thread, SinkMaker maker)
    : stage_{std::move(stage)}, thread_{thread}, maker_{std::move(maker)} {}

Keeper::~Keeper() { stop(); }

void Keeper::start(const std::string& deviceId, std::int64_t now) {
    pastUnderruns_ = 0;
    running_ = true;
    choose(deviceId, now);
}

void Keeper::choose(const std::string& deviceId, std::int64_t now) {
    deviceId_ = deviceId;
    if (!running_) return;
    lostAt_.reset();
    needsRestart_ = false;
    threadsGivenUp_ = 0;
    close();
    open(now);
}

void Keeper::stop() {
    if (!running_) return;
    running_ = false;
    cutOff();
    silence_.reset();
    const auto session = session_;
    close();
    if (session && !session->waitClosed(closeWithin)) thread_.abandon();
}

void Keeper::cutOff() {
    stage_->gate().claim(stage_->gate().allot());
    for (int waited = 0; stage_->gate().busy() && waited < cutOffMillis; ++waited)
        std::this_thread::sleep_for(1ms);
}

void Keeper::open(std::int64_t now) {
    session_ = std::make_shared<Session>(stage_, deviceId_);
    proven_ = false;
    vigil_ = {};
    vigil_.look(now, session_->fills());
    thread_.post([session = session_, maker = maker_] { session->open(maker); });
}

void Keeper::close() {
    if (!session_) return;
    pastUnderruns_ += session_->underruns();
    thread_.post([session = std::move(session_)] { session->close(); });
    session_ = nullptr;
}

void Keeper::goSilent(std::int64_t retryAt) {
    retryAt_ = retryAt;
    if (silence_ && silence_->current()) return;
    silence_.reset();
    silence_.emplace(stage_);
}

void Keeper::look(std::int64_t now) {
    if (!running_) return;
    if (session_)
        lookAtSession(now);
    else if (now >= retryAt_ && threadsGivenUp_ < threadLimit)
        open(now);
}

void Keeper::lookAtSession(std::int64_t now) {
    switch (session_->status()) {
    case Session::Status::opening:
        if (vigil_.look(now, session_->fills()) > openingLimit) giveUpThread(now);
        break;
    case Session::Status::proving:
        lookAtProving(now);
        break;
    case Session::Status::playing:
        lookAtPlaying(now);
        break;
    case Session::Status::noServer:
        lostAt_ = now; // Qt's time to come back counts from the server's return
        close();
        goSilent(now + retryAfterLoss);
        break;
    case Session::Status::noDevice:
        close();
        goSilent(now + retryWhenSilent);
        break;
    case Session::Status::refused:
        refused(now);
        break;
    case Session::Status::ended:
    case Session::Status::closed:
        lose(now);
        break;
    }
}

void Keeper::lookAtProving(std::int64_t now) {
    if (!proven_ && session_->fills() >= provenFills) {
        proven_ = true;
        thread_.post([session = session_] { session->take(); });
    }
    if (vigil_.look(now, session_->fills()) <= openingLimit) return;
    close();
    goSilent(now + retryAfterLoss);
}

void Keeper::lookAtPlaying(std::int64_t now) {
    silence_.reset();
    const auto warm = session_->fills() >= coldFills;
    if (vigil_.look(now, session_->fills()) > (warm ? quietLimit : openingLimit)) {
        lose(now);
        return;
    }
    if (!warm) return;
    lostAt_.reset();
    needsRestart_ = false;
    threadsGivenUp_ = 0;
}

void Keeper::refused(std::int64_t now) {
    needsRestart_ = needsRestart_ || (lostAt_ && now - *lostAt_ > backWithin);
    close();
    goSilent(now + (lostAt_ && !needsRestart_ ? retryAfterLoss : retryWhenSilent));
}

void Keeper::lose(std::int64_t now) {
    if (!lostAt_) lostAt_ = now;
    close();
    goSilent(now);
}

void Keeper::giveUpThread(std::int64_t now) {
    thread_.abandon();
    session_ = nullptr;
    ++threadsGivenUp_;
    needsRestart_ = needsRestart_ || threadsGivenUp_ >= threadLimit;
    // Begins again with a later number, so that the session finds the gate closed if it ever wakes.
    silence_.reset();
    goSilent(now + retryAfterLoss);
}

bool Keeper::isOpening() const {
    if (!session_) return false;
    return session_->status() == Session::Status::opening ||
           (session_->status() == Session::Status::proving && session_->fills() >= provenFills);
}

SoundState Keeper::state() const {
    SoundState state;
    state.underruns = pastUnderruns_ + (session_ ? session_->underruns() : 0);
    if (running_ && silence_) {
        state.kind = needsRestart_ ? SoundState::Kind::needsRestart : SoundState::Kind::silent;
    } else if (running_ && session_ && session_->status() == Session::Status::playing) {
        state.kind = SoundState::Kind::playing;
        state.deviceName = session_->opening().deviceName;
        state.rate = session_->opening().rate;
    }
    return state;
}

} // namespace piolo::device
