// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/settings_saving.h"

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

namespace piolo::models {

struct SettingsSaving::Body {
    std::string configDir;
    Save save;
    std::mutex hearing;
    std::function<void(const Done&)> heard; ///< guarded by `hearing`
    std::mutex mutex;
    std::condition_variable changed;
    // Guarded by `mutex`.
    std::optional<journal::MachineSettings> waiting;
    bool saving = false;
    bool over = false;

    [[nodiscard]] bool isIdle() const { return !waiting && !saving; }

    /// Saving thread.
    void run() {
        std::unique_lock lock(mutex);
        for (;;) {
            changed.wait(lock, [this] { return waiting || over; });
            if (!waiting) return;
            const journal::MachineSettings settings = *std::exchange(waiting, std::nullopt);
            saving = true;
            lock.unlock();
            tell(save(configDir, settings));
            lock.lock();
            saving = false;
            changed.notify_all();
        }
    }
    void tell(const Done& saved) {
        const std::lock_guard lock(hearing);
        if (heard) heard(saved);
    }
};

SettingsSaving::SettingsSaving(std::string configDir, std::function<void(const Done&)> heard, Save save)
    : body_(std::make_shared<Body>()) {
    body_->configDir = std::move(configDir);
    body_->heard = std::move(heard);
    body_->save = std::move(save);
    std::thread([body = body_] { body->run(); }).detach();
}

SettingsSaving::~SettingsSaving() {
    flush(farewellMillis);
    {
        const std::lock_guard lock(body_->hearing);
        body_->heard = {};
    }
    const std::lock_guard lock(body_->mutex);
    body_->over = true;
    body_->changed.notify_all();
}

void SettingsSaving::save(const journal::MachineSettings& settings) {
    const std::lock_guard lock(body_->mutex);
    body_->waiting = settings;
    body_->changed.notify_all();
}

bool SettingsSaving::flush(int millis) {
    std::unique_lock lock(body_->mutex);
    return body_->changed.wait_for(lock, std::chrono::milliseconds(millis),
                                   [this] { return body_->isIdle(); });
}

} // namespace piolo::models
