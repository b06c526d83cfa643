// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/qt_sink.h"

#include "device/sound/pull_device.h"
#include "device/sound/server_probe.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QMediaDevices>
#include <QTimer>

#include <algorithm>
#include <optional>
#include <utility>

namespace piolo::device {
namespace {

constexpr int lowestRate = 8'000;
constexpr int highestRate = 192'000;
constexpr int usualRate = 48'000;
// The size we ask for; about three fifths of it become the queue in front of the device. Half of this causes
// underruns on a busy machine.
constexpr int bufferMillis = 200;
constexpr int measureEveryMillis = 100;

[[nodiscard]] QAudioDevice find(const std::string& id) {
    const auto outputs = QMediaDevices::audioOutputs();
    const auto found = std::find_if(outputs.begin(), outputs.end(),
                                    [&](const QAudioDevice& each) { return each.id().toStdString() == id; });
    return id.empty() || found == outputs.end() ? QMediaDevices::defaultAudioOutput() : *found;
}

[[nodiscard]] std::optional<QAudioFormat> formatFor(const QAudioDevice& device) {
    const auto preferred = device.preferredFormat();
    QAudioFormat format;
    format.setSampleRate(preferred.sampleRate() >= lowestRate && preferred.sampleRate() <= highestRate
                             ? preferred.sampleRate()
                             : usualRate);
    for (const auto sample : {QAudioFormat::Float, QAudioFormat::Int16}) {
        for (const auto channels : {1, preferred.channelCount()}) {
            format.setSampleFormat(sample);
            format.setChannelCount(channels);
            if (channels > 0 && device.isFormatSupported(format)) return format;
        }
    }
    return std::nullopt;
}

class QtSink final : public Sink {
public:
    Opening open(const std::string& deviceId, Feed& feed, Ears ears) override;

private:
    void listen(Feed& feed, Ears ears);

    // Destroyed in reverse order: the sink goes first.
    std::unique_ptr<PullDevice> source_;
    std::unique_ptr<QAudioSink> sink_;
    QTimer measuring_;
};

Opening QtSink::open(const std::string& deviceId, Feed& feed, Ears ears) {
    if (!ServerProbe::ofSystem().answers()) return {Opening::Kind::noServer, {}, 0};
    const auto device = find(deviceId);
    if (device.isNull()) return {Opening::Kind::noDevice, {}, 0};
    const auto format = formatFor(device);
    if (!format) return {Opening::Kind::refused, {}, 0};
    source_ = std::make_unique<PullDevice>(
        feed, FrameFormat{format->sampleFormat() == QAudioFormat::Float, format->channelCount()});
    sink_ = std::make_unique<QAudioSink>(device, *format);
    sink_->setBufferSize(format->bytesForDuration(qint64{1000} * bufferMillis));
    sink_->start(source_.get());
    if (sink_->error() != QAudio::NoError || sink_->state() == QAudio::StoppedState)
        return {Opening::Kind::refused, {}, 0};
    listen(feed, std::move(ears));
    return {Opening::Kind::opened, device.description().toStdString(), format->sampleRate()};
}

void QtSink::listen(Feed& feed, Ears ears) {
    // The sink reports underruns from a thread of the sound server's client; the context object moves them to
    // this thread.
    QObject::connect(sink_.get(), &QAudioSink::stateChanged, source_.get(),
                     [&feed, ears = std::move(ears)](QAudio::State state) {
                         if (state == QAudio::StoppedState) ears.ended();
                         if (state != QAudio::IdleState) return;
                         ears.underrun();
                         feed.ranDry(monotonicNanos());
                     });
    QObject::connect(&measuring_, &QTimer::timeout, source_.get(), [this, &feed] {
        feed.played(monotonicNanos(), sink_->processedUSecs(), sink_->format().sampleRate());
    });
    measuring_.start(measureEveryMillis);
}

} // namespace

std::unique_ptr<Sink> makeQtSink() { return std::make_unique<QtSink>(); }

std::vector<practice::SoundOutput> qtOutputs() {
    std::vector<practice::SoundOutput> outputs;
    if (!ServerProbe::ofSystem().answers()) return outputs;
    for (const auto& device : QMediaDevices::audioOutputs())
        outputs.push_back({device.id().toStdString(), device.description().toStdString()});
    return outputs;
}

} // namespace piolo::device
