// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/made_folder.h"

#include "files/descriptor.h"

#include <cerrno>
#include <filesystem>
#include <sys/stat.h>
#include <system_error>

namespace piolo::journal {

namespace {

int makeOne(const std::string& path) {
    if (::mkdir(path.c_str(), 0777) != 0) return errno == EEXIST ? 0 : errno;
    const auto above = std::filesystem::path(path).parent_path().string();
    return files::syncFolder(above.empty() ? "." : above);
}

} // namespace

int folderMade(const std::string& path) {
    if (path.empty()) return ENOENT;
    std::filesystem::path built;
    for (const auto& part : std::filesystem::path(path)) {
        built /= part;
        std::error_code missing;
        if (std::filesystem::is_directory(built, missing)) continue;
        if (const int error = makeOne(built.string())) return error;
    }
    std::error_code missing;
    return std::filesystem::is_directory(path, missing) ? 0 : ENOTDIR;
}

Done makeFolder(const std::string& path) {
    const int error = folderMade(path);
    if (error == 0) return done();
    return Fault{FaultNumber::cannotMakeFolder, {path, 0}, {std::generic_category().message(error)}};
}

} // namespace piolo::journal
