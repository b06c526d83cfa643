// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/settings_saving.h"

#include <doctest/doctest.h>

#include <condition_variable>
#include <memory>
#include <mutex>
#include <vector>

using namespace piolo;
using models::SettingsSaving;

namespace {

/// A disk that keeps each save waiting until it is let go.
struct SlowDisk {
    std::mutex mutex;
    std::condition_variable changed;
    bool slow = true;
    int begun = 0;
    std::vector<int> saved; ///< holdMillis of what was saved

    Done save(const journal::MachineSettings& settings) {
        std::unique_lock lock(mutex);
        ++begun;
        changed.notify_all();
        changed.wait(lock, [this] { return !slow; });
        saved.push_back(settings.holdMillis);
        if (settings.holdMillis == 999) return Fault{FaultNumber::diskFull, {"settings.json", 0}, {}};
        return done();
    }
    void untilBegun(int times) {
        std::unique_lock lock(mutex);
        changed.wait(lock, [&] { return begun >= times; });
    }
    void letGo() {
        const std::lock_guard lock(mutex);
        slow = false;
        changed.notify_all();
    }
};

SettingsSaving::Save saveOn(const std::shared_ptr<SlowDisk>& disk) {
    return
        [disk](const std::string&, const journal::MachineSettings& settings) { return disk->save(settings); };
}

journal::MachineSettings holding(int millis) {
    journal::MachineSettings settings;
    settings.holdMillis = millis;
    return settings;
}

} // namespace

TEST_CASE("a disk that hangs does not hold up who saves, and only the newest of what waits is saved") {
    const auto disk = std::make_shared<SlowDisk>();
    SettingsSaving saving("/config", {}, saveOn(disk));
    saving.save(holding(301));
    disk->untilBegun(1);
    for (int millis = 302; millis <= 340; ++millis) saving.save(holding(millis)); // does not wait
    CHECK_FALSE(saving.flush(1));
    disk->letGo();
    CHECK(saving.flush(10'000));
    CHECK(disk->saved == std::vector<int>{301, 340});
}

TEST_CASE("each save is told with its outcome") {
    const auto disk = std::make_shared<SlowDisk>();
    disk->letGo();
    std::mutex mutex;
    std::vector<bool> told;
    SettingsSaving saving(
        "/config",
        [&](const Done& saved) {
            const std::lock_guard lock(mutex);
            told.push_back(saved.ok());
        },
        saveOn(disk));
    saving.save(holding(999));
    REQUIRE(saving.flush(10'000));
    saving.save(holding(300));
    REQUIRE(saving.flush(10'000));
    const std::lock_guard lock(mutex);
    CHECK(told == std::vector<bool>{false, true});
}

TEST_CASE("what was saved last before the end is saved, and a disk that hangs delays the end by two seconds "
          "at most") {
    const auto disk = std::make_shared<SlowDisk>();
    disk->letGo();
    SettingsSaving("/config", {}, saveOn(disk)).save(holding(300));
    CHECK(disk->saved == std::vector<int>{300});
    const auto hanging = std::make_shared<SlowDisk>();
    bool told = false;
    {
        SettingsSaving saving(
            "/config", [&told](const Done&) { told = true; }, saveOn(hanging));
        saving.save(holding(301));
        hanging->untilBegun(1);
    }
    hanging->letGo();
    CHECK_FALSE(told);
}
