// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/folder_lock.h"

#include "core/base/id.h"
#include "files/file_fault.h"
#include "journal/folder/made_folder.h"

#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <sys/file.h>

namespace piolo::journal {

namespace {

std::uint64_t fnv1a(const std::string& text) {
    std::uint64_t hash = 0xCBF2'9CE4'8422'2325ULL;
    for (const char c : text) hash = (hash ^ static_cast<std::uint8_t>(c)) * 0x0000'0100'0000'01B3ULL;
    return hash;
}

std::string canonical(const std::string& folder) {
    std::error_code error;
    auto path = std::filesystem::weakly_canonical(std::filesystem::absolute(folder, error), error);
    if (error) return folder;
    if (!path.has_filename()) path = path.parent_path();
    return path.string();
}

} // namespace

std::string FolderLock::name(const std::string& folder, const std::string& device) {
    return Id{0, fnv1a(canonical(folder))}.text().substr(16) + "-" + device;
}

std::string FolderLock::path(const std::string& folder, const std::string& device,
                             const std::string& stateDir) {
    return stateDir + "/locks/" + name(folder, device) + ".lock";
}

Result<FolderLock> FolderLock::take(const std::string& folder, const std::string& device,
                                    const std::string& stateDir, LockCall lock) {
    if (auto made = makeFolder(stateDir + "/locks"); !made) return made.fault();
    const std::string name = path(folder, device, stateDir);
    files::Descriptor file(::open(name.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NONBLOCK, 0666));
    if (!file.isOpen()) return files::writeFault(name, errno);
    if (lock(file.number(), LOCK_EX | LOCK_NB) == 0) return FolderLock(std::move(file));
    if (errno == EWOULDBLOCK) return Fault{FaultNumber::folderInUse, {}, {}};
    if (errno == ENOLCK || errno == EOPNOTSUPP || errno == ENOSYS)
        return Fault{FaultNumber::noLocks, {stateDir, 0}, {}};
    return files::writeFault(name, errno);
}

} // namespace piolo::journal
