// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/sound_settings.h"

#include "models/settings/setting_choices.h"
#include "models/text/formatter.h"

#include <algorithm>

namespace piolo::models {

namespace {

constexpr int firstLookMillis = 200; // time for the answer to the query that showing the list started
constexpr int lookEveryMillis = 2'000;

} // namespace

SoundSettings::SoundSettings(practice::SoundPort& sound, journal::MachineSettings& machine, QObject* parent)
    : QObject(parent), sound_(sound), machine_(machine), layers_(machine) {
    connect(&watching_, &QTimer::timeout, this, &SoundSettings::lookAtSound);
    connect(&layers_, &MixModel::changed, this, [this](int row) {
        emit machineChanged();
        emit mixChanged();
        emit soundsOtherwise(row == 0 ? engine::Layer::beat : static_cast<engine::Layer>(row - 1));
    });
}

QVariantList SoundSettings::devices() const {
    QVariantList list{choice(QString(), qtTrId("sound.output.system"))};
    for (const practice::SoundOutput& output : sound_.outputs())
        list << choice(QString::fromStdString(output.id), QString::fromStdString(output.name));
    // A chosen device that is not plugged in stays selected.
    if (!hasChoice(list, device())) list << choice(device(), qtTrId("sound.output.unplugged").arg(device()));
    return list;
}

void SoundSettings::setWatching(bool watching) {
    if (watching == watching_.isActive()) return;
    if (watching)
        watching_.start(firstLookMillis);
    else
        watching_.stop();
    emit watchingChanged();
}

// The system does not report when a device is plugged in.
void SoundSettings::lookAtSound() {
    watching_.setInterval(lookEveryMillis);
    if (const QVariantList now = devices(); now != seenDevices_) {
        seenDevices_ = now;
        emit devicesChanged();
    }
    const std::uint64_t breaks = sound_.state().underruns;
    if (breaks == seenBreaks_) return;
    seenBreaks_ = breaks;
    emit soundLineChanged();
}

QString SoundSettings::soundLine() const {
    const std::uint64_t breaks = sound_.state().underruns;
    if (breaks == 0) return {};
    const QString times =
        breaks == 1 ? qtTrId("sound.dropouts.once") : qtTrId("sound.dropouts.times").arg(breaks);
    return qtTrId("sound.dropouts").arg(times);
}

void SoundSettings::setDevice(const QString& id) {
    if (id == device()) return;
    machine_.soundDevice = id.toStdString();
    sound_.choose(machine_.soundDevice);
    emit machineChanged();
}

void SoundSettings::setOffsetMillis(int millis) {
    constexpr auto range = journal::MachineSettings::offsetRange;
    const int clamped = std::clamp(millis, range.least, range.most);
    if (clamped == machine_.offsetMillis) return;
    machine_.offsetMillis = clamped;
    sound_.setOffsetMillis(clamped);
    emit machineChanged();
}

QString SoundSettings::volumeText() const { return Formatter::ofHundred(volume()); }

QVariantList SoundSettings::voices() const { return voiceChoices(); }

void SoundSettings::setVoice(const QString& voice) {
    if (voice == this->voice() || !hasChoice(voices(), voice)) return;
    machine_.voice = voice.toStdString();
    emit machineChanged();
    emit mixChanged();
    emit soundsOtherwise(engine::Layer::beat);
}

} // namespace piolo::models
