// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/kept_lines.h"

#include "files/descriptor.h"
#include "files/file_fault.h"
#include "files/whole_file.h"
#include "journal/folder/folder_lock.h"
#include "journal/folder/made_folder.h"
#include "journal/folder/own_file.h"
#include "journal/folder/practice_folder.h"
#include "journal/folder/write_trouble.h"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <map>
#include <span>
#include <sys/stat.h>
#include <unistd.h>

namespace piolo::journal {

namespace {

namespace fs = std::filesystem;

constexpr const char* inodeName = "inode";
constexpr std::uintmax_t mostKept = 256'000'000; // bytes of one file

/// Appends, and creates the file if it is missing. Returns 0 or an errno value.
int append(const std::string& path, const std::string& text, int more) {
    const files::Descriptor file(
        ::open(path.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC | O_NOFOLLOW | more, 0600));
    if (!file.isOpen()) return errno;
    if (const int error = files::writeAll(file.number(), std::as_bytes(std::span(text)))) return error;
    return ::fsync(file.number()) == 0 ? 0 : errno;
}

} // namespace

ino_t inodeOf(const std::string& folder) {
    struct stat now {};
    return ::stat(folder.c_str(), &now) == 0 ? now.st_ino : 0;
}

KeptLines::KeptLines(const JournalLocation& location)
    : folder_(location.folder), journal_(journalFolder(location.folder)), device_(location.device),
      kept_(location.stateDir + "/kept/" + FolderLock::name(location.folder, location.device)) {}

Done KeptLines::keep(const std::vector<WaitingLine>& lines, ino_t inode) const {
    if (lines.empty()) return done();
    if (auto made = makeFolder(kept_); !made) return made.fault();
    const std::string place = kept_ + "/" + inodeName;
    if (const int error = append(place, std::to_string(inode), O_TRUNC))
        return files::writeFault(place, error);
    std::map<std::string, std::string> texts;
    for (const WaitingLine& line : lines)
        texts[kept_ + "/" + fs::path(line.path).filename().string()] += line.text;
    for (const auto& [path, text] : texts)
        if (const int error = append(path, text, O_APPEND)) return files::writeFault(path, error);
    if (const int error = files::syncFolder(kept_)) return files::writeFault(kept_, error);
    return done();
}

// A folder that was copied back has another inode; it is known by this device's own files.
bool KeptLines::belongs() const {
    const auto inode = files::wholeFile(kept_ + "/" + inodeName, 64);
    if (inode && *inode == std::to_string(inodeOf(journal_))) return true;
    const auto files = journalFiles(journal_);
    return files && std::any_of(files->begin(), files->end(),
                                [this](const std::string& path) { return isOwnFile(path, device_); });
}

Done KeptLines::restore(AppendOpener& opener) const {
    const auto kept = journalFiles(kept_);
    if (!kept) return kept.fault();
    if (kept->empty() || !belongs()) return done();
    for (const std::string& path : *kept)
        if (auto restored = restoreFile(opener, path); !restored) return restored;
    std::error_code ignored;
    fs::remove_all(kept_, ignored);
    return done();
}

Done KeptLines::restoreFile(AppendOpener& opener, const std::string& path) const {
    const auto text = files::wholeFile(path, mostKept);
    if (!text) return text.fault();
    const std::string target = journal_ + "/" + fs::path(path).filename().string();
    const auto file = opener.open(target);
    if (!file) return writeTrouble(target, errno);
    // The journal may end without a newline.
    const std::string lines = "\n" + *text;
    const long taken = file->write(lines);
    if (taken < 0) return writeTrouble(target, errno);
    if (static_cast<std::size_t>(taken) < lines.size()) return writeTrouble(target, ENOSPC);
    if (file->sync() != 0) return writeTrouble(target, errno);
    return ::unlink(path.c_str()) == 0 ? done() : Done(files::writeFault(path, errno));
}

} // namespace piolo::journal
