// SPDX-License-Identifier: GPL-3.0-or-later
// Notes on their way from the reader to the window.
#pragma once

#include "practice/drill/drill_note.h"

#include <cstddef>
#include <mutex>
#include <utility>
#include <vector>

namespace piolo::practice {

/// One thread pushes, one takes; a lock is held for a few instructions. Never used by the audio thread.
class NoteQueue {
public:
    /// While this many notes are waiting, pulses are left out; nothing else ever is.
    static constexpr std::size_t most = 4096;

    /// True if the queue was empty, so that its reader must be woken.
    bool push(DrillNote note) {
        const std::lock_guard lock(mutex_);
        if (notes_.size() >= most && note.event.kind == engine::Event::Kind::pulse) return false;
        notes_.push_back(std::move(note));
        return notes_.size() == 1;
    }
    /// All waiting notes, oldest first.
    [[nodiscard]] std::vector<DrillNote> takeAll() {
        const std::lock_guard lock(mutex_);
        return std::exchange(notes_, {});
    }

private:
    std::mutex mutex_;
    std::vector<DrillNote> notes_;
};

} // namespace piolo::practice
