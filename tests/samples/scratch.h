// SPDX-License-Identifier: GPL-3.0-or-later
// A test's own folder, removed together with this object.
#pragma once

#include "../files/kept_files.h"

#include <filesystem>
#include <string>

#include <unistd.h>

namespace piolo::samples {

class Scratch {
public:
    Scratch() : path_(std::filesystem::temp_directory_path() / nextName()) {
        std::filesystem::remove_all(path_);
        std::filesystem::create_directories(path_);
    }
    ~Scratch() {
        test::keepWritten(path_);
        std::filesystem::remove_all(path_);
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;

    [[nodiscard]] std::string at(const std::string& name) const { return (path_ / name).string(); }

private:
    static std::string nextName() {
        static int made = 0;
        return "piolo-samples-" + std::to_string(::getpid()) + '-' + std::to_string(++made);
    }
    std::filesystem::path path_;
};

} // namespace piolo::samples
