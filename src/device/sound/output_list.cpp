// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/output_list.h"

#include "device/sound/qt_sink.h"

#include <mutex>
#include <optional>
#include <utility>

namespace piolo::device {

struct OutputList::Answer {
    std::mutex mutex;
    std::vector<practice::SoundOutput> outputs;
    std::optional<std::int64_t> askedAt; // while a query is pending
};

OutputList::OutputList(SoundThread& thread, Asking asking)
    : thread_{thread}, asking_{std::move(asking)}, answer_{std::make_shared<Answer>()} {}

OutputList& OutputList::ofProcess() {
    static auto* const list = new OutputList{SoundThread::ofProcess(), qtOutputs};
    return *list;
}

std::vector<practice::SoundOutput> OutputList::known(std::int64_t now) {
    const std::lock_guard lock{answer_->mutex};
    if (!answer_->askedAt || now - *answer_->askedAt > askAgainAfter) {
        answer_->askedAt = now;
        thread_.post([answer = answer_, asking = asking_] {
            auto outputs = asking();
            const std::lock_guard inside{answer->mutex};
            answer->outputs = std::move(outputs);
            answer->askedAt.reset();
        });
    }
    return answer_->outputs;
}

} // namespace piolo::device
