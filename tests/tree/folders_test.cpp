// SPDX-License-Identifier: GPL-3.0-or-later
// Folders small enough to read at a glance, and names that show what is a test.
#include "room_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <string_view>

namespace fs = std::filesystem;

namespace {

constexpr std::size_t mostFiles = 25;

/// Folders of data with one case per file: they grow with the cases tried.
constexpr std::string_view dataFolders[] = {"tests/fuzz/seeds", "tests/fuzz/finds"};

bool isData(const std::string& folder) {
    return std::ranges::any_of(dataFolders, [&](std::string_view data) {
        return folder == data || folder.starts_with(std::string(data) + "/");
    });
}

bool isGenerated(const fs::path& path) { return path.string().find("__pycache__") != std::string::npos; }

/// The files of each folder below src, qml and tests; a header and its source count once.
std::map<std::string, std::set<std::string>> filesByFolder() {
    std::map<std::string, std::set<std::string>> folders;
    for (const auto* root : {"src", "qml", "tests"})
        for (const auto& entry : fs::recursive_directory_iterator(fs::path(PIOLO_SOURCE_DIR) / root)) {
            if (!entry.is_regular_file() || isGenerated(entry.path())) continue;
            const auto suffix = entry.path().extension();
            const bool isCode = suffix == ".h" || suffix == ".cpp";
            const fs::path folder = fs::relative(entry.path().parent_path(), PIOLO_SOURCE_DIR);
            folders[folder.string()].insert(
                (isCode ? entry.path().stem() : entry.path().filename()).string());
        }
    return folders;
}

/// The sources below tests, and whether each has test cases.
std::map<std::string, bool> testSources() {
    std::map<std::string, bool> sources;
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(PIOLO_SOURCE_DIR) / "tests")) {
        if (entry.path().extension() != ".cpp" && entry.path().extension() != ".h") continue;
        const std::string name = fs::relative(entry.path(), PIOLO_SOURCE_DIR).string();
        const std::string text = sourceText(name);
        sources[name] = text.find("\nTEST_CASE") != std::string::npos;
    }
    return sources;
}

} // namespace

TEST_CASE("no folder of src, qml and tests has more files than are found at one look") {
    const auto folders = filesByFolder();
    CHECK(folders.size() > 50);
    for (const auto& [folder, files] : folders) {
        if (isData(folder)) continue;
        CAPTURE(folder);
        CHECK(files.size() <= mostFiles);
    }
}

TEST_CASE("a source has test cases when its name ends in _test, and only then") {
    int tests = 0;
    for (const auto& [name, hasCases] : testSources()) {
        CAPTURE(name);
        CHECK(name.ends_with("_test.cpp") == hasCases);
        tests += hasCases ? 1 : 0;
    }
    CHECK(tests > 60);
}
