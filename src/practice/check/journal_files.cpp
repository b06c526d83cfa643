// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/check/journal_check.h"

#include "files/file_fault.h"
#include "journal/folder/own_file.h"
#include "journal/folder/practice_folder.h"

#include <filesystem>
#include <system_error>
#include <utility>

namespace piolo::practice {
namespace {

namespace fs = std::filesystem;

// A single journal file may name passages that another device's file describes.
std::vector<std::string> besides(const fs::path& file) {
    const fs::path folder = fs::absolute(file).parent_path();
    if (folder.filename() != "journal") return {};
    auto found = journal::journalFiles(folder.string());
    return found ? std::move(found).value() : std::vector<std::string>();
}

} // namespace

Result<JournalFiles> journalFilesAt(const std::string& path) {
    std::error_code error;
    const bool folder = fs::is_directory(path, error);
    if (error) return files::readFault(path, error.value());
    if (!folder) return JournalFiles{{path}, besides(path)};
    const std::string inside = journal::journalFolder(path);
    auto found = journal::journalFiles(fs::is_directory(inside, error) ? inside : path);
    if (!found) return found.fault();
    return JournalFiles{std::move(found).value(), {}};
}

} // namespace piolo::practice
