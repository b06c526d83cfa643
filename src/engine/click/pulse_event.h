// SPDX-License-Identifier: GPL-3.0-or-later
// The event of a pulse, the same for the drill and for a playback.
#pragma once

#include "engine/click/click_choice.h"
#include "engine/queue/event.h"
#include "engine/time/section.h"

namespace piolo::engine {

/// `event` with the click that sounds, or is left out, at that place. Real-time-safe.
[[nodiscard]] inline Event pulseEvent(Event event, Click click, BarPlace place) noexcept {
    event.layer = click.layer;
    event.sounds = click.sounds;
    event.waits = place.waits;
    event.bar = place.bar;
    event.beat = place.beat;
    event.part = place.part;
    return event;
}

} // namespace piolo::engine
