// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps what tests wrote, where PIOLO_KEPT names a folder for it: a later test holds the schemas against it.
#pragma once

#include <atomic>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <system_error>
#include <utility>

#include <unistd.h>

namespace piolo::test {

/// Copies the journals and passage files under `folder`, before it goes. Does nothing without PIOLO_KEPT.
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
        std::error_code refused; // a folder of that name, a file that may not be read: not a file to judge
        std::filesystem::copy_file(entries->path(), std::filesystem::path(kept) / own, refused);
    }
}

/// Does that when it goes: to be declared right after the folder, so that it goes before it.
struct KeptFiles {
    explicit KeptFiles(std::string under) : folder(std::move(under)) {}
    KeptFiles(const KeptFiles&) = delete;
    KeptFiles& operator=(const KeptFiles&) = delete;
    ~KeptFiles() { keepWritten(folder); }
    std::string folder;
};

} // namespace piolo::test
