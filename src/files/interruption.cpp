// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/interruption.h"

namespace piolo::files {
namespace {

volatile std::sig_atomic_t caught = 0;

void remember(int signal) { caught = signal; }

} // namespace

Interruption::Interruption() {
    caught = 0;
    struct sigaction ours {};
    ours.sa_handler = remember;
    for (std::size_t i = 0; i < deferred.size(); ++i) {
        sigaction(deferred.at(i), nullptr, &before_.at(i));
        // Signals that were ignored (under nohup, for example) stay ignored.
        if (before_.at(i).sa_handler != SIG_IGN) sigaction(deferred.at(i), &ours, nullptr);
    }
}

Interruption::~Interruption() {
    for (std::size_t i = 0; i < deferred.size(); ++i) sigaction(deferred.at(i), &before_.at(i), nullptr);
    if (caught != 0) static_cast<void>(std::raise(caught));
}

bool Interruption::came() noexcept { return caught != 0; }

} // namespace piolo::files
