// SPDX-License-Identifier: GPL-3.0-or-later
#include "program_output.h"
#include "room_table.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <regex>

namespace fs = std::filesystem;

namespace {

/// The folders with a line in the map in DEVELOPERS.md.
std::set<std::string> mappedFolders(const std::string& text) {
    std::set<std::string> folders;
    const std::regex row(R"(\n\| `([\w./-]+)` \|)");
    for (std::sregex_iterator it(text.begin(), text.end(), row), end; it != end; ++it)
        folders.insert((*it)[1]);
    return folders;
}

/// The folders that must have a line: each room, each folder of tests, and qml, samples and docs.
std::set<std::string> realFolders() {
    std::set<std::string> folders{"qml", "samples", "docs"};
    for (const auto* parent : {"src", "tests"})
        for (const auto& entry : fs::directory_iterator(fs::path(PIOLO_SOURCE_DIR) / parent))
            if (entry.is_directory())
                folders.insert(std::string(parent) + "/" + entry.path().filename().string());
    return folders;
}

} // namespace

TEST_CASE("every folder has a line in the room map, and every line has a folder or a script") {
    const auto mapped = mappedFolders(sourceText("DEVELOPERS.md"));
    const auto real = realFolders();
    REQUIRE(real.size() > 10);
    for (const auto& folder : real) {
        INFO(folder << " has no line in DEVELOPERS.md");
        CHECK(mapped.contains(folder));
    }
    for (const auto& folder : mapped) {
        INFO(folder << " is in DEVELOPERS.md and nowhere else");
        CHECK(fs::exists(fs::path(PIOLO_SOURCE_DIR) / folder));
    }
}

TEST_CASE("the rooms without a screen link no Qt") {
    for (const auto* room : {"core", "engine", "files", "journal"}) {
        const std::string program = std::string(PIOLO_BUILD_DIR) + "/tests/test_" + room;
        REQUIRE(fs::exists(program));
        const std::string needed = outputOf("readelf -d '" + program + "'");
        INFO(room);
        CHECK(needed.find("NEEDED") != std::string::npos);
        CHECK(needed.find("libQt") == std::string::npos);
    }
}

TEST_CASE("practice links no screen: neither Qt Quick, nor QML, nor Qt GUI") {
    const std::string program = std::string(PIOLO_BUILD_DIR) + "/tests/test_practice";
    REQUIRE(fs::exists(program));
    const std::string needed = outputOf("readelf -d '" + program + "'");
    CHECK(needed.find("libQt6Core") != std::string::npos);
    for (const auto* screen : {"libQt6Quick", "libQt6Qml", "libQt6Gui"}) {
        INFO(screen);
        CHECK(needed.find(screen) == std::string::npos);
    }
}

TEST_CASE("the top level contains only what the layout lists") {
    static const std::set<std::string> layout{
        "README.md", "DEVELOPERS.md", "CMakeLists.txt", "LICENSE", "qml", "src", "tests", "samples", "docs"};
    for (const auto& entry : fs::directory_iterator(PIOLO_SOURCE_DIR)) {
        const std::string name = entry.path().filename().string();
        if (name.starts_with(".") || name.starts_with("build")) continue;
        INFO(name);
        CHECK(layout.contains(name));
    }
}
