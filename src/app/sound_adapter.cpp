// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sound_adapter.h"

namespace piolo::app {

QList<models::SoundOutput> SoundAdapter::outputs() const {
    QList<models::SoundOutput> found;
    for (const auto& output : device::SoundOut::outputs())
        found.append({QString::fromStdString(output.id), QString::fromStdString(output.name)});
    return found;
}

models::SoundHealth SoundAdapter::health() const {
    switch (out_.state().kind) {
    case device::SoundState::Kind::starting:
        return models::SoundHealth::starting;
    case device::SoundState::Kind::playing:
        return models::SoundHealth::playing;
    case device::SoundState::Kind::silent:
        return models::SoundHealth::silent;
    case device::SoundState::Kind::needsRestart:
        return models::SoundHealth::needsRestart;
    }
    return models::SoundHealth::silent;
}

} // namespace piolo::app
