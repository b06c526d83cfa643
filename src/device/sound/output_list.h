// SPDX-License-Identifier: GPL-3.0-or-later
// The outputs there are, asked for on the sound thread without waiting for it.
#pragma once

#include "device/sound/sound_out.h"
#include "device/sound/sound_thread.h"

#include <functional>
#include <memory>
#include <vector>

namespace piolo::device {

/// Window's thread. A question that the sound thread never answers is put again after a while, as that one
/// may have been given up.
class OutputList {
public:
    using Asking = std::function<std::vector<Output>()>;
    /// `thread` must outlive this.
    OutputList(SoundThread& thread, Asking asking);
    /// The one of the process.
    [[nodiscard]] static OutputList& ofProcess();

    /// What is known; asks anew unless a question is on its way.
    [[nodiscard]] std::vector<Output> known(std::int64_t now);

    static constexpr std::int64_t askAgainAfter = 5'000'000'000;

private:
    struct Answer; // outlives the list, for a thread that was given up
    SoundThread& thread_;
    Asking asking_;
    std::shared_ptr<Answer> answer_;
};

} // namespace piolo::device
