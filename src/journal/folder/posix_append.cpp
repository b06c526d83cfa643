// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/descriptor.h"
#include "journal/folder/made_folder.h"
#include "journal/folder/ports.h"

#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

namespace piolo::journal {

namespace {

/// An open journal file, tracked by name: if the name now refers to another file (because a sync service
/// replaced it), writing continues in that file.
class PosixAppendFile final : public AppendFile {
public:
    explicit PosixAppendFile(std::string path) : path_(std::move(path)) {}

    bool open() {
        const std::string folder = std::filesystem::path(path_).parent_path().string();
        errno = folderMade(folder);
        if (errno != 0) return false;
        file_ = files::Descriptor(::open(path_.c_str(), O_WRONLY | O_APPEND | O_CREAT | O_CLOEXEC, 0666));
        if (!file_.isOpen()) return false;
        // Even if the file existed: an earlier sync of the folder may have failed.
        errno = files::syncFolder(folder);
        return errno == 0;
    }

    long write(std::string_view bytes) override {
        if (!isStillNamed() && !open()) return -1;
        ssize_t taken = 0;
        do taken = ::write(file_.number(), bytes.data(), bytes.size());
        while (taken < 0 && errno == EINTR);
        return taken;
    }

    int sync() override { return ::fdatasync(file_.number()); }

private:
    [[nodiscard]] bool isStillNamed() const {
        struct stat opened {};
        struct stat named {};
        return ::fstat(file_.number(), &opened) == 0 && ::stat(path_.c_str(), &named) == 0 &&
               opened.st_ino == named.st_ino && opened.st_dev == named.st_dev;
    }

    std::string path_;
    files::Descriptor file_;
};

class PosixOpener final : public AppendOpener {
public:
    std::unique_ptr<AppendFile> open(const std::string& path) override {
        auto file = std::make_unique<PosixAppendFile>(path);
        if (!file->open()) return nullptr;
        return file;
    }
};

} // namespace

std::shared_ptr<AppendOpener> posixOpener() { return std::make_shared<PosixOpener>(); }

} // namespace piolo::journal
