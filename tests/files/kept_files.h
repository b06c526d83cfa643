// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps the files that tests wrote if PIOLO_KEPT names a folder for them: a later test checks them against
// the schemas.
#pragma once

#include <atomic>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <system_error>
#include <utility>

#include <unistd.h>

namespace piolo::test {

/// Copies the journals and passage files under `folder` before they are deleted. Does nothing without
/// PIOLO_KEPT.
inline void keepWritten(const std::filesystem::path& folder) {
    static std::atomic<int> count{0};
    const char* kept = std::getenv("PIOLO_KEPT"); // NOLINT(concurrency-mt-unsafe)
    if (!kept) return;
    std::error_code error;
    std::filesystem::create_directories(kept, error);
    std::filesystem::recursive_directory_iterator entries(folder, error);
    for (; !error && entries != end(entries); entries.increment(error)) {
        const std::string name = entries->path().filename().string();
        if (!name.ends_with(".jsonl") && !name.ends_with(".piolo.json")) continue;
        const auto own = std::to_string(::getpid()) + '-' + std::to_string(++count) + '-' + name;
        std::error_code refused; // a folder of that name or an unreadable file: not a file to check
        std::filesystem::copy_file(entries->path(), std::filesystem::path(kept) / own, refused);
    }
}

/// Calls keepWritten() when destroyed: declare it right after the folder object, so that it is destroyed
/// first.
struct KeptFiles {
    explicit KeptFiles(std::string under) : folder(std::move(under)) {}
    KeptFiles(const KeptFiles&) = delete;
    KeptFiles& operator=(const KeptFiles&) = delete;
    ~KeptFiles() { keepWritten(folder); }
    std::string folder;
};

} // namespace piolo::test
