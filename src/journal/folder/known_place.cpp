// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/known_place.h"

#include <cerrno>
#include <sys/stat.h>

namespace piolo::journal {

int KnownPlace::learn(const std::string& folder) {
    struct stat now {};
    if (::stat(folder.c_str(), &now) != 0) return errno;
    if (!S_ISDIR(now.st_mode)) return ENOTDIR;
    folder_ = folder;
    device_ = now.st_dev;
    inode_ = now.st_ino;
    return 0;
}

bool KnownPlace::isThere() {
    struct stat now {};
    if (::stat(folder_.c_str(), &now) != 0 || now.st_ino != inode_) return false;
    if (now.st_dev != device_ && !hasTheFile()) return false;
    device_ = now.st_dev;
    return true;
}

bool KnownPlace::hasTheFile() const { return fileInode_ != 0 && inodeOf(file_) == fileInode_; }

void KnownPlace::rememberFile(const std::string& path, int descriptor) {
    struct stat opened {};
    if (::fstat(descriptor, &opened) != 0) return;
    file_ = path;
    fileInode_ = opened.st_ino;
}

ino_t inodeOf(const std::string& path) {
    struct stat now {};
    return ::stat(path.c_str(), &now) == 0 ? now.st_ino : 0;
}

} // namespace piolo::journal
