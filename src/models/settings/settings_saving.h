// SPDX-License-Identifier: GPL-3.0-or-later
// Saves the machine's settings on a thread of its own: a busy disk does not hold up the window.
#pragma once

#include "core/base/result.h"
#include "journal/settings/machine_settings.h"

#include <functional>
#include <memory>
#include <string>

namespace piolo::models {

/// Window thread. Only the newest settings that wait are saved.
class SettingsSaving {
public:
    /// Writes settings; journal::saveMachineSettings(), or what stands for it in a test. Any thread.
    using Save = std::function<Done(const std::string& configDir, const journal::MachineSettings& settings)>;
    /// `heard` is called on the saving thread after each save.
    SettingsSaving(std::string configDir, std::function<void(const Done&)> heard,
                   Save save = journal::saveMachineSettings);
    /// Waits for what is not saved yet, at most `farewellMillis`. `heard` is not called after that.
    ~SettingsSaving();
    SettingsSaving(const SettingsSaving&) = delete;
    SettingsSaving& operator=(const SettingsSaving&) = delete;

    void save(const journal::MachineSettings& settings);
    /// True if everything is saved, or was found not to be saveable, within `millis`.
    bool flush(int millis);

    static constexpr int farewellMillis = 2000;

private:
    struct Body;
    std::shared_ptr<Body> body_; // shared with the thread, which may hang in a disk operation
};

} // namespace piolo::models
