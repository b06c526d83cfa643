// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/journal_check.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

namespace piolo::app {
namespace {

namespace fs = std::filesystem;

Fault cannotRead(const std::string& path, const std::error_code& error) {
    return {FaultNumber::cannotRead, {path}, {error.message()}};
}

Result<std::vector<std::string>> journalsIn(const fs::path& folder) {
    std::vector<std::string> found;
    std::error_code error;
    fs::directory_iterator entries(folder, error);
    while (!error && entries != fs::directory_iterator()) {
        std::error_code unknown;
        if (entries->path().extension() == ".jsonl" && entries->is_regular_file(unknown))
            found.push_back(entries->path().string());
        entries.increment(error);
    }
    if (error) return cannotRead(folder.string(), error);
    std::ranges::sort(found);
    return found;
}

// A journal file alone may name passages that another device's file describes.
std::vector<std::string> besides(const fs::path& file) {
    const fs::path folder = fs::absolute(file).parent_path();
    if (folder.filename() != "journal") return {};
    const auto found = journalsIn(folder);
    return found ? *found : std::vector<std::string>();
}

} // namespace

Result<JournalFiles> journalFilesAt(const std::string& path) {
    std::error_code error;
    const bool folder = fs::is_directory(path, error);
    if (error) return cannotRead(path, error);
    if (!folder) return JournalFiles{{path}, besides(path)};
    const fs::path journal = fs::path(path) / "journal";
    const auto found = journalsIn(fs::is_directory(journal, error) ? journal : fs::path(path));
    if (!found) return found.fault();
    return JournalFiles{*found, {}};
}

} // namespace piolo::app
