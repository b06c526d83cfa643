// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/atomic_file.h"

#include "files/descriptor.h"
#include "files/file_fault.h"

#include <array>
#include <cerrno>
#include <cstdio>
#include <ctime>
#include <fcntl.h>
#include <filesystem>
#include <string_view>
#include <sys/file.h>
#include <sys/random.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace piolo::files {

namespace {

/// A file name has at most 255 bytes; this leaves room for the affixes.
constexpr std::size_t longestStem = 200;
constexpr int mostNames = 100;
constexpr std::string_view partEnding = ".part";
constexpr std::size_t lettersInPart = 6;

constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz012345";

std::string randomLetters() {
    std::array<unsigned char, lettersInPart> bytes{};
    if (::getrandom(bytes.data(), bytes.size(), 0) != static_cast<ssize_t>(bytes.size())) bytes = {};
    std::string text;
    for (const auto byte : bytes) text += letters[byte % letters.size()];
    return text;
}

std::string folderOf(const std::string& path) {
    const auto slash = path.rfind('/');
    if (slash == std::string::npos) return ".";
    return slash == 0 ? "/" : path.substr(0, slash);
}

/// The beginning of the names of a file's temporary files, without their folder.
std::string partStem(const std::string& path) {
    const auto slash = path.rfind('/');
    const std::string name = slash == std::string::npos ? path : path.substr(slash + 1);
    return "." + name.substr(0, longestStem) + ".";
}

std::string partName(const std::string& path) {
    return folderOf(path) + "/" + partStem(path) + randomLetters() + std::string(partEnding);
}

/// Removes the file unless a program writes it.
void removeUnlessLocked(const std::string& part) {
    const Descriptor file(::open(part.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK));
    struct stat found {};
    if (!file.isOpen() || ::fstat(file.number(), &found) != 0 || !S_ISREG(found.st_mode)) return;
    // It is locked just after it was made.
    constexpr time_t young = 60;
    if (::time(nullptr) - found.st_mtime < young) return;
    if (::flock(file.number(), LOCK_EX | LOCK_NB) == 0) ::unlink(part.c_str());
}

void removeOldParts(const std::string& path) {
    const std::string stem = partStem(path);
    const std::size_t length = stem.size() + lettersInPart + partEnding.size();
    std::error_code ended;
    for (std::filesystem::directory_iterator each(folderOf(path), ended), none; !ended && each != none;
         each.increment(ended)) {
        const std::string name = each->path().filename().string();
        const bool ours = name.size() == length && name.starts_with(stem) && name.ends_with(partEnding) &&
                          name.find_first_not_of(letters, stem.size()) == stem.size() + lettersInPart;
        if (ours) removeUnlessLocked(each->path().string());
    }
}

/// Follows a symbolic link, so that its target is replaced and the link stays.
std::string linkFollowed(const std::string& path) {
    struct stat found {};
    if (::lstat(path.c_str(), &found) != 0 || !S_ISLNK(found.st_mode)) return path;
    std::error_code error;
    const auto target = std::filesystem::canonical(path, error);
    return error ? path : target.string();
}

bool isStraight(const std::string& path) {
    // /dev/stdout may lead to a regular file that another process has open. /dev/shm is an ordinary folder.
    const bool isDevice = path.starts_with("/dev/") && !path.starts_with("/dev/shm/");
    if (isDevice || path.starts_with("/proc/")) return true;
    struct stat found {};
    return ::stat(path.c_str(), &found) == 0 && !S_ISREG(found.st_mode);
}

} // namespace

struct AtomicFile::Body {
    std::string path;
    std::string part; ///< empty: writing directly to `path`
    Descriptor file;

    Body() = default;
    Body(const Body&) = delete;
    Body& operator=(const Body&) = delete;
    ~Body() {
        if (!part.empty()) ::unlink(part.c_str());
    }

    int openPart() {
        // rename() would also replace a write-protected file.
        if (::access(path.c_str(), W_OK) != 0 && errno != ENOENT) return errno;
        removeOldParts(path);
        for (int attempt = 0; attempt < mostNames; ++attempt) {
            const std::string name = partName(path);
            file = Descriptor(::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
            if (file.isOpen()) {
                part = name;
                (void)::flock(file.number(), LOCK_EX | LOCK_NB); // without it, the file's age protects it
                return keepMode();
            }
            if (errno != EEXIST) return errno;
        }
        return EEXIST;
    }

    int keepMode() const {
        struct stat old {};
        if (::stat(path.c_str(), &old) != 0) return 0;
        return ::fchmod(file.number(), old.st_mode & 07777) == 0 ? 0 : errno;
    }

    int place() {
        if (part.empty()) return file.close();
        if (::fsync(file.number()) != 0) return errno;
        if (const int error = file.close()) return error;
        if (std::rename(part.c_str(), path.c_str()) != 0) return errno;
        part.clear();
        return syncFolder(folderOf(path));
    }

    Done outcome(int error) const {
        if (error != 0) return writeFault(path, error);
        return done();
    }
};

AtomicFile::AtomicFile(std::unique_ptr<Body> body) : body_(std::move(body)) {}
AtomicFile::AtomicFile(AtomicFile&&) noexcept = default;
AtomicFile& AtomicFile::operator=(AtomicFile&&) noexcept = default;
AtomicFile::~AtomicFile() = default;

Result<AtomicFile> AtomicFile::create(std::string path) {
    auto body = std::make_unique<Body>();
    int error = 0;
    if (isStraight(path)) {
        body->path = std::move(path);
        body->file = Descriptor(::open(body->path.c_str(), O_WRONLY | O_TRUNC | O_CLOEXEC));
        error = body->file.isOpen() ? 0 : errno;
    } else {
        body->path = linkFollowed(path);
        error = body->openPart();
    }
    if (error != 0) return writeFault(body->path, error);
    return AtomicFile(std::move(body));
}

Done AtomicFile::write(std::span<const std::byte> bytes) {
    return body_->outcome(writeAll(body_->file.number(), bytes));
}

Done AtomicFile::commit() { return body_->outcome(body_->place()); }

Done replaceFile(const std::string& path, std::span<const std::byte> bytes) {
    auto file = AtomicFile::create(path);
    if (!file) return file.fault();
    const Done written = file.value().write(bytes);
    return written ? file.value().commit() : written;
}

} // namespace piolo::files
