// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/supervisor.h"

#include <chrono>
#include <thread>
#include <utility>

namespace piolo::device {
namespace {

using namespace std::chrono_literals;

constexpr auto closeWithin = 1000ms;
constexpr int cutOffMillis = 500;

} // namespace

Supervisor::Supervisor(std::shared_ptr<RenderHost> host, SoundThread& thread, SinkMaker maker)
    : host_{std::move(host)}, thread_{thread}, maker_{std::move(maker)} {}

Supervisor::~Supervisor() { stop(); }

void Supervisor::start(const std::string& deviceId, std::int64_t now) {
    pastUnderruns_ = 0;
    running_ = true;
    choose(deviceId, now);
}

void Supervisor::choose(const std::string& deviceId, std::int64_t now) {
    deviceId_ = deviceId;
    if (!running_) return;
    lostAt_.reset();
    needsRestart_ = false;
    threadsGivenUp_ = 0;
    close();
    open(now);
}

void Supervisor::stop() {
    if (!running_) return;
    running_ = false;
    cutOff();
    silence_.reset();
    const auto session = stream_;
    close();
    if (session && !session->waitClosed(closeWithin)) thread_.abandon();
}

void Supervisor::cutOff() {
    host_->gate().claim(host_->gate().allot());
    for (int waited = 0; host_->gate().busy() && waited < cutOffMillis; ++waited)
        std::this_thread::sleep_for(1ms);
}

void Supervisor::open(std::int64_t now) {
    stream_ = std::make_shared<DeviceStream>(host_, deviceId_);
    proven_ = false;
    watchdog_ = {};
    watchdog_.look(now, stream_->fills());
    thread_.post([session = stream_, maker = maker_] { session->open(maker); });
}

void Supervisor::close() {
    if (!stream_) return;
    pastUnderruns_ += stream_->underruns();
    thread_.post([session = std::move(stream_)] { session->close(); });
    stream_ = nullptr;
}

void Supervisor::goSilent(std::int64_t retryAt) {
    retryAt_ = retryAt;
    if (silence_ && silence_->current()) return;
    silence_.reset();
    silence_.emplace(host_);
}

void Supervisor::look(std::int64_t now) {
    if (!running_) return;
    if (stream_)
        lookAtSession(now);
    else if (now >= retryAt_ && threadsGivenUp_ < threadLimit)
        open(now);
}

void Supervisor::lookAtSession(std::int64_t now) {
    switch (stream_->status()) {
    case DeviceStream::Status::opening:
        if (watchdog_.look(now, stream_->fills()) > openingLimit) giveUpThread(now);
        break;
    case DeviceStream::Status::proving:
        lookAtProving(now);
        break;
    case DeviceStream::Status::playing:
        lookAtPlaying(now);
        break;
    case DeviceStream::Status::noServer:
        lostAt_ = now; // the time that Qt has to come back counts from the server's return
        close();
        goSilent(now + retryAfterLoss);
        break;
    case DeviceStream::Status::noDevice:
        close();
        goSilent(now + retryWhenSilent);
        break;
    case DeviceStream::Status::refused:
        refused(now);
        break;
    case DeviceStream::Status::ended:
    case DeviceStream::Status::closed:
        lose(now);
        break;
    }
}

void Supervisor::lookAtProving(std::int64_t now) {
    if (!proven_ && stream_->fills() >= provenFills) {
        proven_ = true;
        thread_.post([session = stream_] { session->take(); });
    }
    if (watchdog_.look(now, stream_->fills()) <= openingLimit) return;
    close();
    goSilent(now + retryAfterLoss);
}

void Supervisor::lookAtPlaying(std::int64_t now) {
    silence_.reset();
    const auto warm = stream_->fills() >= coldFills;
    if (watchdog_.look(now, stream_->fills()) > (warm ? quietLimit : openingLimit)) {
        lose(now);
        return;
    }
    if (!warm) return;
    lostAt_.reset();
    needsRestart_ = false;
    threadsGivenUp_ = 0;
}

void Supervisor::refused(std::int64_t now) {
    needsRestart_ = needsRestart_ || (lostAt_ && now - *lostAt_ > backWithin);
    close();
    goSilent(now + (lostAt_ && !needsRestart_ ? retryAfterLoss : retryWhenSilent));
}

void Supervisor::lose(std::int64_t now) {
    if (!lostAt_) lostAt_ = now;
    close();
    goSilent(now);
}

void Supervisor::giveUpThread(std::int64_t now) {
    thread_.abandon();
    stream_ = nullptr;
    ++threadsGivenUp_;
    needsRestart_ = needsRestart_ || threadsGivenUp_ >= threadLimit;
    // Restarts the silent clock with a later number, so that the abandoned stream cannot render if it ever
    // wakes up.
    silence_.reset();
    goSilent(now + retryAfterLoss);
}

bool Supervisor::isOpening() const {
    if (!stream_) return false;
    return stream_->status() == DeviceStream::Status::opening ||
           (stream_->status() == DeviceStream::Status::proving && stream_->fills() >= provenFills);
}

practice::SoundState Supervisor::state() const {
    practice::SoundState state;
    state.underruns = pastUnderruns_ + (stream_ ? stream_->underruns() : 0);
    if (running_ && silence_) {
        state.kind =
            needsRestart_ ? practice::SoundState::Kind::needsRestart : practice::SoundState::Kind::silent;
    } else if (running_ && stream_ && stream_->status() == DeviceStream::Status::playing) {
        state.kind = practice::SoundState::Kind::playing;
        state.deviceName = stream_->opening().deviceName;
        state.rate = stream_->opening().rate;
    }
    return state;
}

} // namespace piolo::device
