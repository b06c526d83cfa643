// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/settings/settings_model.h"

#include "../../practice/book_fixture.h"
#include "../../practice/virtual_sound.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

using namespace piolo;
using models::MixModel;
using models::SettingsModel;
using models::SoundSettings;
using test::BookFixture;

namespace {

struct SettingsFixture : BookFixture {
    journal::MachineSettings machine;
    test::VirtualSound sound{std::make_shared<engine::DrillEngine>()};
    SettingsModel settings{*book, sound, machine, path("config")};

    [[nodiscard]] journal::MachineSettings onDisk() const {
        Fault reported;
        auto random = journal::systemRandomness();
        auto read = journal::loadMachineSettings(path("config"), *random, &reported);
        REQUIRE(read);
        return std::move(read).value();
    }
};

} // namespace

TEST_CASE_FIXTURE(SettingsFixture, "a practice setting is recorded once, and only when it changes") {
    const auto facts = [this] { return book->notebook().factCount(); };
    settings.practice()->setGapMillis(settings.practice()->gapMillis());
    settings.practice()->setPlayOn(false);
    settings.practice()->setDayOpening("twoRungsBelow");
    CHECK(facts() == 0);
    settings.practice()->setGapMillis(6'000);
    settings.practice()->setPlayOn(true);
    settings.practice()->setPauseAfterRuns(0);
    settings.practice()->setSecureDays(2);
    settings.practice()->setDayOpening("asLeft");
    CHECK(facts() == 5);
    const PracticeSettings wanted{6'000, true, 0, 2, DayOpening::asLeft};
    CHECK(book->notebook().settings() == wanted);
}

TEST_CASE_FIXTURE(SettingsFixture, "values out of range are clamped, unknown choices not taken") {
    settings.practice()->setGapMillis(99'999);
    CHECK(settings.practice()->gapMillis() == 30'000);
    settings.practice()->setSecureDays(0);
    CHECK(settings.practice()->secureDays() == 1);
    CHECK(settings.practice()->reactionMillis() == 250);
    settings.practice()->setReactionMillis(4000);
    CHECK(settings.practice()->reactionMillis() == 1000);
    settings.sound()->setOffsetMillis(5'000);
    CHECK(settings.sound()->offsetMillis() == 1'000);
    settings.setHoldMillis(0);
    CHECK(settings.holdMillis() == 300);
    settings.setTwiceMillis(9'000);
    CHECK(settings.twiceMillis() == 1'000);
    settings.setBounceMillis(0);
    CHECK(settings.bounceMillis() == 5);
    settings.sound()->setVoice("trumpet");
    CHECK(settings.sound()->voice() == "wood");
    settings.sound()->setVoice("impulse");
    CHECK(settings.sound()->voice() == "wood");
    settings.setTheme("sepia");
    CHECK(settings.theme() == "system");
    settings.practice()->setDayOpening("never");
    CHECK(settings.practice()->dayOpening() == "twoRungsBelow");
}

TEST_CASE_FIXTURE(SettingsFixture, "the machine's settings are on disk after the last change") {
    settings.sound()->setVoice("metal");
    settings.setTheme("dark");
    settings.sound()->setDevice("hall");
    settings.sound()->layers()->setLevel(1, 0.5);
    settings.sound()->layers()->setMuted(2, true);
    settings.saveNow();
    const auto read = onDisk();
    CHECK(read.voice == "metal");
    CHECK(read.theme == "dark");
    CHECK(read.soundDevice == "hall");
    CHECK(read.levels.at("downbeat") == doctest::Approx(0.5));
    CHECK(read.muted.at("group") == true);
    CHECK(sound.state().deviceName == "hall");
    CHECK(settings.fault().isEmpty());
}

TEST_CASE("settings changed a moment before the end are saved, too") {
    BookFixture fixture;
    journal::MachineSettings machine;
    test::VirtualSound sound{std::make_shared<engine::DrillEngine>()};
    {
        SettingsModel settings(*fixture.book, sound, machine, fixture.path("config"));
        settings.sound()->setVoice("reed");
    }
    Fault reported;
    auto random = journal::systemRandomness();
    const auto read = journal::loadMachineSettings(fixture.path("config"), *random, &reported);
    REQUIRE(read);
    CHECK(read.value().voice == "reed");
}

TEST_CASE_FIXTURE(SettingsFixture, "the mix follows voice, levels and mutes; sessions start low") {
    CHECK(settings.sound()->mix() == engine::Mix{});
    CHECK(settings.sound()->mix().level < 0.5F);
    QSignalSpy changes(settings.sound(), &SoundSettings::mixChanged);
    settings.sound()->setVoice("dry");
    settings.sound()->layers()->setLevel(0, 2.0);
    settings.sound()->layers()->setMuted(4, true);
    settings.sound()->layers()->setMuted(4, true);
    CHECK(changes.size() == 3);
    const engine::Mix mix = settings.sound()->mix();
    CHECK(mix.voice == engine::Voice::dry);
    CHECK(mix.level == doctest::Approx(1.0));
    CHECK(mix.muted[static_cast<std::size_t>(engine::Layer::subdivision)]);
    CHECK(mix.layerLevel[static_cast<std::size_t>(engine::Layer::subdivision)] == doctest::Approx(1.0));
}

TEST_CASE_FIXTURE(SettingsFixture, "the whole cannot be muted, and no level is shown in dB") {
    const QAbstractItemModelTester tester(settings.sound()->layers(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    MixModel& layers = *settings.sound()->layers();
    REQUIRE(layers.rowCount() == 8);
    layers.setMuted(0, true);
    CHECK(!layers.data(layers.index(0), MixModel::Muted).toBool());
    layers.setLevel(99, 1.0);
    for (int row = 0; row < layers.rowCount(); ++row) {
        CHECK(!layers.data(layers.index(row), MixModel::Words).toString().isEmpty());
        CHECK(layers.data(layers.index(row), MixModel::LevelText).toString().endsWith("%"));
    }
}

TEST_CASE_FIXTURE(SettingsFixture, "a chosen device that is not plugged in stays chosen") {
    settings.sound()->setDevice("stage box");
    const QVariantList devices = settings.sound()->devices();
    REQUIRE(devices.size() == 3);
    CHECK(devices[2].toMap().value("value") == "stage box");
    settings.sound()->setDevice("");
    CHECK(settings.sound()->devices().size() == 2);
}

TEST_CASE_FIXTURE(SettingsFixture, "light and dark are what was chosen") {
    settings.setTheme("dark");
    CHECK(settings.dark());
    settings.setTheme("light");
    CHECK(!settings.dark());
}

TEST_CASE_FIXTURE(SettingsFixture,
                  "a device that is plugged in while the settings are shown appears in the list") {
    settings.sound()->lookAtSound();
    QSignalSpy changed(settings.sound(), &SoundSettings::devicesChanged);
    settings.sound()->lookAtSound();
    CHECK(changed.isEmpty());
    sound.plugIn({"headset", "Headset"});
    settings.sound()->lookAtSound();
    CHECK(changed.size() == 1);
    CHECK(settings.sound()->devices().last().toMap().value("text") == "Headset");
}

TEST_CASE_FIXTURE(SettingsFixture,
                  "devices are looked for while the settings are shown, and at no other time") {
    CHECK_FALSE(settings.sound()->watching());
    QSignalSpy changed(settings.sound(), &SoundSettings::devicesChanged);
    settings.sound()->setWatching(true);
    CHECK(changed.wait(20'000));
    settings.sound()->setWatching(false);
    CHECK_FALSE(settings.sound()->watching());
}

TEST_CASE_FIXTURE(SettingsFixture, "every break in the sound is counted and shown") {
    CHECK(settings.sound()->soundLine() == "");
    QSignalSpy changed(settings.sound(), &SoundSettings::soundLineChanged);
    sound.breakOff();
    settings.sound()->lookAtSound();
    CHECK(settings.sound()->soundLine().contains("dropped out once"));
    sound.breakOff();
    settings.sound()->lookAtSound();
    settings.sound()->lookAtSound();
    CHECK(settings.sound()->soundLine().contains("dropped out 2 times"));
    CHECK(changed.size() == 2);
}
