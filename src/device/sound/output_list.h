// SPDX-License-Identifier: GPL-3.0-or-later
// The available outputs, queried on the sound thread without waiting for it.
#pragma once

#include "device/sound/sound_out.h"
#include "device/sound/sound_thread.h"

#include <functional>
#include <memory>
#include <vector>

namespace piolo::device {

/// Window thread. If the sound thread does not answer a query, it is repeated after a while, because that
/// thread may have been abandoned.
class OutputList {
public:
    using Asking = std::function<std::vector<practice::SoundOutput>()>;
    /// `thread` must outlive this.
    OutputList(SoundThread& thread, Asking asking);
    /// The single instance of this process.
    [[nodiscard]] static OutputList& ofProcess();

    /// The outputs known so far. Starts a new query unless one is pending.
    [[nodiscard]] std::vector<practice::SoundOutput> known(std::int64_t now);

    static constexpr std::int64_t askAgainAfter = 5'000'000'000;

private:
    struct Answer; // outlives the list, for a sound thread that was abandoned
    SoundThread& thread_;
    Asking asking_;
    std::shared_ptr<Answer> answer_;
};

} // namespace piolo::device
