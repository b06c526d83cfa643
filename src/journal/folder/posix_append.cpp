// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/descriptor.h"
#include "journal/folder/known_place.h"
#include "journal/folder/ports.h"

#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

namespace piolo::journal {

namespace {

/// An open journal file, tracked by name: if the name now refers to another file (because a sync service
/// replaced it), writing continues in that file. It is never made in another folder than the known one.
class PosixAppendFile final : public AppendFile {
public:
    PosixAppendFile(std::string path, std::shared_ptr<KnownPlace> place)
        : path_(std::move(path)), place_(std::move(place)) {}

    bool open() {
        if (!isInPlace()) return false;
        // Neither waits for somebody to read a pipe nor follows a link out of the folder.
        constexpr int flags = O_WRONLY | O_APPEND | O_CREAT | O_CLOEXEC | O_NONBLOCK | O_NOFOLLOW;
        files::Descriptor file(::open(path_.c_str(), flags, 0666));
        if (!file.isOpen()) {
            if (errno == ELOOP || errno == ENXIO || errno == EISDIR) errno = noRegularFile;
            return false;
        }
        if (!isRegular(file)) return false;
        file_ = std::move(file);
        // Even if the file existed: an earlier sync of the folder may have failed.
        errno = files::syncFolder(std::filesystem::path(path_).parent_path().string());
        if (errno == 0 && place_) place_->rememberFile(path_, file_.number());
        return errno == 0;
    }

    long write(std::string_view bytes) override {
        if (!isInPlace()) return -1;
        if (!isStillNamed() && !open()) return -1;
        ssize_t taken = 0;
        do taken = ::write(file_.number(), bytes.data(), bytes.size());
        while (taken < 0 && errno == EINTR);
        return taken;
    }

    int sync() override { return ::fdatasync(file_.number()); }

private:
    [[nodiscard]] bool isInPlace() const {
        if (!place_ || place_->isThere()) return true;
        errno = folderMissing;
        return false;
    }
    [[nodiscard]] static bool isRegular(const files::Descriptor& file) {
        struct stat opened {};
        if (::fstat(file.number(), &opened) != 0) return false;
        if (S_ISREG(opened.st_mode)) return true;
        errno = noRegularFile;
        return false;
    }
    [[nodiscard]] bool isStillNamed() const {
        struct stat opened {};
        struct stat named {};
        return ::fstat(file_.number(), &opened) == 0 && ::lstat(path_.c_str(), &named) == 0 &&
               opened.st_ino == named.st_ino && opened.st_dev == named.st_dev;
    }

    std::string path_;
    std::shared_ptr<KnownPlace> place_;
    files::Descriptor file_;
};

class PosixOpener final : public AppendOpener {
public:
    int stayIn(const std::string& folder) override {
        place_ = std::make_shared<KnownPlace>();
        return place_->learn(folder);
    }
    std::unique_ptr<AppendFile> open(const std::string& path) override {
        auto file = std::make_unique<PosixAppendFile>(path, place_);
        if (!file->open()) return nullptr;
        return file;
    }

private:
    std::shared_ptr<KnownPlace> place_;
};

} // namespace

std::shared_ptr<AppendOpener> posixOpener() { return std::make_shared<PosixOpener>(); }

} // namespace piolo::journal
