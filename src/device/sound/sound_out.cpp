// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/sound_out.h"

#include "device/sound/output_list.h"
#include "device/sound/qt_sink.h"
#include "device/sound/supervisor.h"

#include <QTimer>

#include <atomic>
#include <chrono>
#include <ctime>
#include <utility>

namespace piolo::device {
namespace {

constexpr int pollMillis = 50;
constexpr std::int64_t nanosPerMilli = 1'000'000;

} // namespace

std::int64_t monotonicNanos() noexcept {
    return std::chrono::nanoseconds{std::chrono::steady_clock::now().time_since_epoch()}.count();
}

struct SoundOut::Body {
    explicit Body(std::shared_ptr<engine::Renderer> renderer)
        : host{std::make_shared<RenderHost>(std::move(renderer))}, keeper{host, SoundThread::ofProcess(),
                                                                          makeQtSink} {}

    void look();

    std::shared_ptr<RenderHost> host;
    Supervisor keeper;
    std::atomic<std::int64_t> offsetNanos{0};
    std::function<void()> heard;
    practice::SoundState reported;
    QTimer looking;
};

void SoundOut::Body::look() {
    keeper.look(monotonicNanos());
    if (keeper.state() == reported) return;
    reported = keeper.state();
    if (heard) heard();
}

SoundOut::SoundOut(std::shared_ptr<engine::Renderer> renderer)
    : body_{std::make_unique<Body>(std::move(renderer))} {
    QObject::connect(&body_->looking, &QTimer::timeout, &body_->looking, [this] { body_->look(); });
}

SoundOut::~SoundOut() = default;

void SoundOut::start(const std::string& deviceId) {
    body_->keeper.start(deviceId, monotonicNanos());
    (void)outputs(); // starts a query, so that the outputs are known when they are needed
    body_->looking.start(pollMillis);
}

void SoundOut::stop() {
    body_->looking.stop();
    body_->keeper.stop();
}

void SoundOut::choose(const std::string& deviceId) { body_->keeper.choose(deviceId, monotonicNanos()); }

std::uint64_t SoundOut::audibleAt(std::int64_t nanos) const noexcept {
    return body_->host->audibleAt(nanos - body_->offsetNanos.load(std::memory_order_relaxed));
}

std::int64_t SoundOut::sleptNanos() const noexcept {
    timespec boot{};
    if (::clock_gettime(CLOCK_BOOTTIME, &boot) != 0) return 0;
    return boot.tv_sec * 1000 * nanosPerMilli + boot.tv_nsec - monotonicNanos();
}

void SoundOut::setOffsetMillis(int millis) {
    body_->offsetNanos.store(millis * nanosPerMilli, std::memory_order_relaxed);
}

practice::SoundState SoundOut::state() const { return body_->keeper.state(); }

void SoundOut::onChange(std::function<void()> heard) { body_->heard = std::move(heard); }

void SoundOut::endThread() { SoundThread::ofProcess().end(); }

bool SoundOut::threadsLeftBehind() noexcept { return SoundThread::leftBehind() > 0; }

std::vector<practice::SoundOutput> SoundOut::outputs() const {
    return OutputList::ofProcess().known(monotonicNanos());
}

} // namespace piolo::device
