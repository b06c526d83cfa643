// SPDX-License-Identifier: GPL-3.0-or-later
#include "tripwire/tripwire.h"

#include "tripwire/system_gate.h"

namespace piolo::tripwire {

namespace {

constinit thread_local bool watching = false;
constinit thread_local Trips trips;

} // namespace

void note(Trip trip) noexcept {
    if (watching) ++trips.counts.at(static_cast<std::size_t>(trip));
}

Tripwire::Tripwire() noexcept {
    trips = {};
    watching = true;
    shutGate();
}

Trips Tripwire::cut() noexcept {
    const long call = openGate();
    if (call >= 0) {
        note(Trip::systemCall);
        trips.firstCall = call;
    }
    watching = false;
    return trips;
}

Tripwire::~Tripwire() { cut(); }

std::string textOf(const Trips& reported) {
    constexpr std::array<const char*, tripKinds> names{"memory", "lock", "log", "exception", "system call"};
    std::string text;
    for (std::size_t kind = 0; kind < tripKinds; ++kind)
        text += (kind == 0 ? "" : ", ") + std::string(names.at(kind)) + ' ' +
                std::to_string(reported.counts.at(kind));
    if (reported.firstCall >= 0) text += " (number " + std::to_string(reported.firstCall) + ')';
    return text;
}

} // namespace piolo::tripwire
