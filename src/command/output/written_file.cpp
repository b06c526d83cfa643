// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/output/written_file.h"

#include "files/atomic_file.h"

#include <filesystem>
#include <span>

namespace piolo::command {

Done writeInFolder(const std::string& path, std::string_view bytes) {
    const std::filesystem::path above = std::filesystem::path(path).parent_path();
    std::error_code error;
    if (!above.empty()) std::filesystem::create_directories(above, error);
    if (error) return Fault{FaultNumber::cannotMakeFolder, {above.string()}, {error.message()}};
    return files::replaceFile(path, std::as_bytes(std::span(bytes)));
}

} // namespace piolo::command
