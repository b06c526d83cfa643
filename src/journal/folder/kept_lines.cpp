// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/kept_lines.h"

#include "files/file_fault.h"
#include "files/whole_file.h"
#include "journal/folder/folder_lock.h"
#include "journal/folder/known_place.h"
#include "journal/folder/made_folder.h"
#include "journal/folder/own_file.h"
#include "journal/folder/practice_folder.h"
#include "journal/folder/write_trouble.h"

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <map>
#include <unistd.h>

namespace piolo::journal {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t mostKept = 256'000'000; // bytes of one file

// Whatever stands there may end within a line.
Done appendTo(AppendOpener& opener, const std::string& path, const std::string& text) {
    const auto file = opener.open(path);
    const Attempt made = append(file.get(), "\n" + text);
    return made.error == 0 ? done() : Done(writeTrouble(path, made.error));
}

} // namespace

KeptLines::KeptLines(const JournalLocation& location)
    : journal_(journalFolder(location.folder)), device_(location.device),
      kept_(location.stateDir + "/kept/" + FolderLock::name(location.folder, location.device)) {}

Done KeptLines::keep(const std::vector<WaitingLine>& lines, ino_t inode) const {
    if (lines.empty()) return done();
    const std::string folder = kept_ + "/" + std::to_string(inode);
    if (auto made = makeFolder(folder); !made) return made.fault();
    std::map<std::string, std::string> texts;
    for (const WaitingLine& line : lines)
        texts[folder + "/" + fs::path(line.path).filename().string()] += line.text;
    const auto opener = posixOpener();
    for (const auto& [path, text] : texts)
        if (auto kept = appendTo(*opener, path, text); !kept) return kept;
    return done();
}

// A folder that was copied back has another inode; it is known by this device's own files.
std::vector<std::string> KeptLines::belonging() const {
    const auto files = journalFiles(journal_);
    const bool hasOwn = files && std::any_of(files->begin(), files->end(), [this](const std::string& path) {
                            return isOwnFile(path, device_);
                        });
    std::vector<std::string> found;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(kept_, error))
        if (entry.is_directory(error) &&
            (hasOwn || entry.path().filename() == std::to_string(inodeOf(journal_))))
            found.push_back(entry.path().string());
    return found;
}

Done KeptLines::restore(AppendOpener& opener) const {
    for (const std::string& folder : belonging())
        if (auto restored = restoreFolder(opener, folder); !restored) return restored;
    return done();
}

Done KeptLines::restoreFolder(AppendOpener& opener, const std::string& folder) const {
    const auto kept = journalFiles(folder);
    if (!kept) return kept.fault();
    for (const std::string& path : *kept)
        if (auto restored = restoreFile(opener, path); !restored) return restored;
    std::error_code ignored;
    fs::remove(folder, ignored);
    return done();
}

Done KeptLines::restoreFile(AppendOpener& opener, const std::string& path) const {
    const auto text = files::wholeFile(path, mostKept);
    if (!text) return text.fault();
    const std::string name = fs::path(path).filename().string();
    if (auto restored = appendTo(opener, journal_ + "/" + name, *text); !restored) return restored;
    return ::unlink(path.c_str()) == 0 ? done() : Done(files::writeFault(path, errno));
}

} // namespace piolo::journal
