// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/checkpoint/checkpoint.h"

#include "files/atomic_file.h"
#include "files/content_sum.h"
#include "files/whole_file.h"
#include "journal/checkpoint/packed_facts.h"
#include "journal/checkpoint/packed_members.h"
#include "journal/checkpoint/program_id.h"
#include "journal/folder/folder_lock.h"
#include "journal/folder/made_folder.h"
#include "journal/folder/practice_folder.h"

#include <algorithm>
#include <cstring>
#include <filesystem>
#include <span>

namespace piolo::journal {

namespace {

constexpr std::string_view checkpointEnding = ".checkpoint";

/// What must match before anything else. The number reveals the byte order.
std::string stampOf(const std::string& program, const std::string& device) {
    Packer packer;
    constexpr std::uint64_t order = 0x0102'0304'0506'0708;
    packer.raw({reinterpret_cast<const char*>(&order), sizeof order});
    packer(program, device);
    return packer.take();
}

std::vector<KnownFile> filesOf(const FolderContents& contents) {
    std::vector<KnownFile> files;
    for (const ReadFile& file : contents.files) {
        files.push_back({std::filesystem::path(file.path).filename().string(), file.extent, {}});
        for (const Fault& fault : contents.faults)
            if (fault.location.file == file.path) {
                files.back().faults.push_back(fault);
                files.back().faults.back().location.file.clear();
            }
    }
    return files;
}

/// The content can be packed if it was read to its end and nothing is about to be appended.
bool isWhole(const FolderContents& contents) {
    return contents.unclosed.empty() &&
           std::none_of(contents.faults.begin(), contents.faults.end(),
                        [](const Fault& fault) { return fault.location.line == 0; });
}

} // namespace

std::string checkpointFile(const std::string& folder, const std::string& device,
                           const std::string& cacheDir) {
    return cacheDir + "/" + FolderLock::name(folder, device) + std::string(checkpointEnding);
}

std::optional<KnownFolder> loadCheckpoint(const std::string& file, const std::string& device) {
    const std::string program = programId();
    if (program.empty() || !std::filesystem::is_regular_file(file)) return std::nullopt;
    auto bytes = files::wholeFile(file);
    if (!bytes) return std::nullopt;
    const std::string head = stampOf(program, device);
    std::uint64_t sum = 0;
    if (!bytes->starts_with(head) || bytes->size() < head.size() + sizeof sum) return std::nullopt;
    const std::string_view rest = std::string_view(*bytes).substr(head.size());
    std::memcpy(&sum, rest.data(), sizeof sum);
    if (sum != files::contentSum(rest.substr(sizeof sum))) return std::nullopt;
    Unpacker unpacker(rest.substr(sizeof sum));
    KnownFolder known;
    std::string folder;
    unpacker(folder);
    Unpacker inFolder(folder);
    inFolder(known.files, known.highest);
    if (!unpacker.fits() || !inFolder.fits()) return std::nullopt;
    const std::size_t from = bytes->size() - unpacker.left();
    known.history = unpackedFacts(std::move(bytes).value(), from);
    if (!known.history) return std::nullopt;
    return known;
}

bool writeCheckpoint(const std::string& file, const std::string& folder, const std::string& device,
                     const std::stop_token& stop) {
    const std::string program = programId();
    if (program.empty()) return false;
    const auto contents = readFolder(folder, device, stop);
    if (!contents || stop.stop_requested() || !isWhole(*contents)) return false;
    const auto facts = packedFacts(contents->facts, stop);
    if (!facts) return false;
    Packer inFolder;
    inFolder(filesOf(*contents), contents->highest);
    Packer packer;
    packer(inFolder.bytes());
    packer.raw(*facts);
    const std::uint64_t sum = files::contentSum(packer.bytes());
    std::string all = stampOf(program, device);
    all.append(reinterpret_cast<const char*>(&sum), sizeof sum).append(packer.bytes());
    if (stop.stop_requested() || folderMade(std::filesystem::path(file).parent_path().string()) != 0)
        return false;
    return files::replaceFile(file, std::as_bytes(std::span(all))).ok();
}

} // namespace piolo::journal
