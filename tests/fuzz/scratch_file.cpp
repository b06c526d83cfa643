// SPDX-License-Identifier: GPL-3.0-or-later
#include "scratch_file.h"

#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <stdlib.h>

namespace piolo::fuzz {

namespace fs = std::filesystem;

namespace {

struct Scratch {
    fs::path path;
    Scratch() {
        // In memory if possible: a disk would be the slowest part.
        auto name =
            (fs::exists("/dev/shm") ? fs::path("/dev/shm") : fs::temp_directory_path()) / "piolo-fuzz-XXXXXX";
        std::string text = name.string();
        if (::mkdtemp(text.data()) == nullptr) throw std::runtime_error("no scratch folder");
        path = text;
    }
    ~Scratch() {
        std::error_code ignored;
        fs::remove_all(path, ignored);
    }
};

const fs::path& folder() {
    static const Scratch scratch;
    return scratch.path;
}

} // namespace

std::string scratchFolder() { return folder().string(); }

std::string scratchFile(const std::string& name, std::string_view bytes) {
    const auto path = folder() / name;
    fs::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary | std::ios::trunc)
        .write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return path.string();
}

} // namespace piolo::fuzz
