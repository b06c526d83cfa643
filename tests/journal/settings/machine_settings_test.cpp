// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/settings/machine_settings.h"

#include "../../files/scratch_folder.h"
#include "../fakes.h"

#include <cstdlib>
#include <doctest/doctest.h>
#include <nlohmann/json.hpp>
#include <sys/stat.h>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::contentOf;
using piolo::test::CountedIds;
using piolo::test::put;
using piolo::test::ScratchFolder;

namespace {

const std::string madeDevice = "00000000000000070000000000000001";

struct Loaded {
    MachineSettings settings;
    Fault reported;
};

Loaded load(const std::string& configDir) {
    CountedIds ids;
    Fault reported;
    auto settings = loadMachineSettings(configDir, ids, &reported);
    REQUIRE(settings.ok());
    return {std::move(settings).value(), reported};
}

/// Loads a file with that content; returns the first argument of the reported fault, or "".
std::string reportedOf(const std::string& content) {
    const ScratchFolder folder;
    put(folder / "settings.json", content);
    const auto reported = load(folder.path()).reported;
    if (reported == Fault{}) return "";
    CHECK(reported.location == FaultLocation{folder / "settings.json", 0});
    CHECK(contentOf(folder / "settings.json.damaged-1") == content);
    CHECK(load(folder.path()).reported == Fault{});
    return reported.arguments.empty() ? "whole" : reported.arguments[0];
}

/// Sets an environment variable for the duration of a test.
class Variable {
public:
    Variable(const char* name, const char* value) : name_(name) {
        if (const char* old = std::getenv(name)) old_ = old;
        had_ = std::getenv(name) != nullptr;
        if (value)
            ::setenv(name, value, 1);
        else
            ::unsetenv(name);
    }
    Variable(const Variable&) = delete;
    Variable& operator=(const Variable&) = delete;
    ~Variable() {
        if (had_)
            ::setenv(name_, old_.c_str(), 1);
        else
            ::unsetenv(name_);
    }

private:
    const char* name_;
    std::string old_;
    bool had_ = false;
};

} // namespace

TEST_CASE("the first start creates a device id and saves it at once") {
    const ScratchFolder folder;
    const auto first = load(folder / "deep/config");
    CHECK(first.settings.device == madeDevice);
    CHECK(first.reported == Fault{});
    CountedIds others(99);
    CHECK(loadMachineSettings(folder / "deep/config", others, nullptr)->device == madeDevice);
}

TEST_CASE("settings are read back as saved, and unknown ones are preserved") {
    const ScratchFolder folder;
    MachineSettings settings;
    settings.device = std::string(32, 'd');
    settings.soundDevice = "Kopfhörer \"blau\"";
    settings.offsetMillis = 180;
    settings.holdMillis = 1200;
    settings.twiceMillis = 500;
    settings.bounceMillis = 80;
    settings.voice = "rim";
    settings.levels = {{"beat", 0.5}, {"subdivision", 0.0}};
    settings.muted = {{"subdivision", true}};
    settings.keys = {{"mark", "Space"}, {"back", "PgUp"}};
    settings.theme = "dark";
    settings.language = "de";
    settings.modelClick = false;
    settings.folder = "/home/player/Band, spring/ü";
    settings.welcomed = true;
    settings.unknown = R"({"pedal":{"model":[1,2]}})";
    REQUIRE(saveMachineSettings(folder.path(), settings).ok());
    const auto back = load(folder.path()).settings;
    CHECK(back.device == settings.device);
    CHECK(back.soundDevice == settings.soundDevice);
    CHECK(back.offsetMillis == settings.offsetMillis);
    CHECK(back.holdMillis == settings.holdMillis);
    CHECK(back.twiceMillis == settings.twiceMillis);
    CHECK(back.bounceMillis == settings.bounceMillis);
    CHECK(back.voice == settings.voice);
    CHECK(back.levels == settings.levels);
    CHECK(back.muted == settings.muted);
    CHECK(back.keys == settings.keys);
    CHECK(back.theme == settings.theme);
    CHECK(back.language == settings.language);
    CHECK(back.modelClick == settings.modelClick);
    CHECK(back.folder == settings.folder);
    CHECK(back.welcomed == settings.welcomed);
    CHECK(back.unknown == settings.unknown);
    REQUIRE(saveMachineSettings(folder.path(), back).ok());
    CHECK(nlohmann::json::parse(contentOf(folder / "settings.json"))["pedal"]["model"][1] == 2);
}

TEST_CASE("a damaged file is set aside, reported and replaced") {
    CHECK(reportedOf("") == "whole");
    CHECK(reportedOf("{") == "whole");
    CHECK(reportedOf("[]") == "whole");
    CHECK(reportedOf("\xFF") == "whole");
}

TEST_CASE("a bad value is reported by its name, the file set aside, and the other values stay") {
    CHECK(reportedOf(R"({"device":"laptop"})") == "device");
    CHECK(reportedOf(R"({"offsetMs":1001})") == "offsetMs");
    CHECK(reportedOf(R"({"offsetMs":"30"})") == "offsetMs");
    CHECK(reportedOf(R"({"holdMs":299})") == "holdMs");
    CHECK(reportedOf(R"({"twiceMs":1001})") == "twiceMs");
    CHECK(reportedOf(R"({"bounceMs":4})") == "bounceMs");
    CHECK(reportedOf(R"({"holdMs":300,"twiceMs":1000,"bounceMs":5})") == "");
    CHECK(reportedOf(R"({"levels":{"beat":1.5}})") == "levels");
    CHECK(reportedOf(R"({"muted":{"beat":1}})") == "muted");
    CHECK(reportedOf(R"({"keys":["Space"]})") == "keys");
    CHECK(reportedOf(R"({"theme":"pink"})") == "theme");
    CHECK(reportedOf(R"({"modelClick":"yes"})") == "modelClick");
    CHECK(reportedOf(R"({"language":1})") == "language");
    CHECK(reportedOf(R"({"folder":[]})") == "folder");
    CHECK(reportedOf(R"({"welcomed":1})") == "welcomed");
    CHECK(reportedOf(R"({"voice":7,"soundDevice":true})") == "soundDevice");
    CHECK(reportedOf(R"({"offsetMs":-500,"levels":{},"theme":"light"})") == "");
    const ScratchFolder folder;
    put(folder / "settings.json",
        R"({"device":"dddddddddddddddddddddddddddddddd","theme":"pink","voice":"rim"})");
    const auto settings = load(folder.path()).settings;
    CHECK(settings.device == std::string(32, 'd'));
    CHECK(settings.voice == "rim");
    CHECK(settings.theme == "system");
}

TEST_CASE("settings of more than a megabyte are refused and left as they are") {
    const std::string most = "{}" + std::string(largestSettings - 2, ' ');
    CHECK(reportedOf(most).empty());
    const ScratchFolder folder;
    put(folder / "settings.json", most + " ");
    CountedIds ids;
    const auto settings = loadMachineSettings(folder.path(), ids, nullptr);
    REQUIRE_FALSE(settings.ok());
    CHECK(settings.fault() ==
          Fault{FaultNumber::cannotRead, {folder / "settings.json", 0}, {"File too large"}});
    CHECK(contentOf(folder / "settings.json").size() == most.size() + 1);
}

TEST_CASE("a second damaged file is saved under another name") {
    const ScratchFolder folder;
    for (const char* content : {"first", "second"}) {
        put(folder / "settings.json", content);
        CHECK(load(folder.path()).reported.number == FaultNumber::badJson);
    }
    CHECK(contentOf(folder / "settings.json.damaged-1") == "first");
    CHECK(contentOf(folder / "settings.json.damaged-2") == "second");
}

TEST_CASE("a config directory that cannot be created is reported") {
    const ScratchFolder folder;
    put(folder / "file", "");
    const auto saved = saveMachineSettings(folder / "file/config", {});
    REQUIRE_FALSE(saved.ok());
    CHECK(saved.fault().number == FaultNumber::cannotMakeFolder);
}

TEST_CASE("the base directories are used, with the default ones under HOME") {
    // Source: XDG Base Directory Specification: $HOME/.config, $HOME/.local/state, $HOME/.local/share;
    // relative paths are ignored.
    const Variable home("HOME", "/home/oboe");
    const Variable config("XDG_CONFIG_HOME", nullptr);
    const Variable state("XDG_STATE_HOME", "relative/state");
    const Variable data("XDG_DATA_HOME", "/mnt/data");
    const auto found = systemDirectories();
    REQUIRE(found.ok());
    CHECK(found->config == "/home/oboe/.config/piolo");
    CHECK(found->state == "/home/oboe/.local/state/piolo");
    CHECK(found->data == "/mnt/data/piolo");
}

TEST_CASE("without a home folder there are no base directories, unless each is named") {
    for (const char* home : {static_cast<const char*>(nullptr), "", "relative"}) {
        const Variable none("HOME", home);
        const Variable config("XDG_CONFIG_HOME", "/mnt/config");
        const Variable state("XDG_STATE_HOME", "/mnt/state");
        const Variable data("XDG_DATA_HOME", "/mnt/data");
        const Variable cache("XDG_CACHE_HOME", nullptr);
        REQUIRE_FALSE(systemDirectories().ok());
        CHECK(systemDirectories().fault() == Fault{FaultNumber::noHome, {}, {}});
        const Variable all("XDG_CACHE_HOME", "/mnt/cache");
        CHECK(systemDirectories().ok());
    }
}

TEST_CASE("settings that are a pipe are reported, not waited for") {
    const ScratchFolder folder;
    REQUIRE(::mkfifo((folder / "settings.json").c_str(), 0666) == 0);
    const auto found = loadMachineSettings(folder.path(), *systemRandomness(), nullptr);
    REQUIRE_FALSE(found.ok());
    CHECK(found.fault() == Fault{FaultNumber::cannotRead, {folder / "settings.json", 0}, {"not a file"}});
}
