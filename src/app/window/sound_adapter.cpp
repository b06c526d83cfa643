// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/sound_adapter.h"

namespace piolo::app {

QList<practice::SoundOutput> SoundAdapter::outputs() const {
    QList<practice::SoundOutput> found;
    for (const auto& output : device::SoundOut::outputs())
        found.append({QString::fromStdString(output.id), QString::fromStdString(output.name)});
    return found;
}

practice::SoundHealth SoundAdapter::health() const {
    switch (out_.state().kind) {
    case device::SoundState::Kind::starting:
        return practice::SoundHealth::starting;
    case device::SoundState::Kind::playing:
        return practice::SoundHealth::playing;
    case device::SoundState::Kind::silent:
        return practice::SoundHealth::silent;
    case device::SoundState::Kind::needsRestart:
        return practice::SoundHealth::needsRestart;
    }
    return practice::SoundHealth::silent;
}

} // namespace piolo::app
