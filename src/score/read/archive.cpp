// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/archive.h"

#include "score/read/encoding.h"
#include "score/read/limits.h"
#include "score/read/xml_text.h"

#include <algorithm>
#include <array>
#include <memory>
#include <zip.h>

namespace piolo::score {

namespace {

constexpr const char* containerName = "META-INF/container.xml";
constexpr std::size_t longestShown = 60;

struct Closing {
    void operator()(zip_t* archive) const { zip_discard(archive); }
    void operator()(zip_file_t* file) const { zip_fclose(file); }
};
using Archive = std::unique_ptr<zip_t, Closing>;
using Entry = std::unique_ptr<zip_file_t, Closing>;

/// The bytes must outlive the archive.
Archive open(std::string_view bytes) {
    zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, nullptr);
    if (source == nullptr) return nullptr;
    Archive archive(zip_open_from_source(source, ZIP_RDONLY, nullptr));
    if (!archive) zip_source_free(source);
    return archive;
}

/// Sizes stated in the archive are not trusted: bytes are counted as they arrive.
Result<std::string> entry(zip_t* archive, const std::string& name, std::size_t most, const Fault& absent) {
    const Entry file(zip_fopen(archive, name.c_str(), 0));
    if (!file) return absent;
    std::string bytes;
    std::array<char, 65'536> block{};
    for (;;) {
        const auto count = zip_fread(file.get(), block.data(), block.size());
        if (count == 0) return bytes;
        if (count < 0) return Fault{FaultNumber::brokenArchive, absent.place, {}};
        if (bytes.size() + static_cast<std::size_t>(count) > most)
            return Fault{FaultNumber::scoreTooLarge, absent.place, {std::to_string(most / 1024) + " KiB"}};
        bytes.append(block.data(), static_cast<std::size_t>(count));
    }
}

bool leadsOut(std::string_view path) {
    if (path.empty() || path.front() == '/' || path.find_first_of("\\:") != std::string_view::npos)
        return true;
    for (std::size_t begin = 0; begin <= path.size();) {
        const auto end = std::min(path.find('/', begin), path.size());
        const auto step = path.substr(begin, end - begin);
        if (step == ".." || step == ".") return true;
        begin = end + 1;
    }
    return false;
}

Result<std::string> rootPath(std::string_view container, const std::string& file) {
    XmlText text;
    const Done loaded = text.load(container, file);
    if (!loaded) return loaded.fault();
    const auto root = text.root().child("rootfiles").child("rootfile");
    const std::string path = root.attribute("full-path").value();
    if (leadsOut(path)) return Fault{FaultNumber::archivePath, {file}, {cutText(path, longestShown)}};
    return path;
}

} // namespace

bool isArchive(std::string_view bytes) noexcept { return bytes.starts_with("PK"); }

Result<std::string> unpackedScore(std::string_view bytes, const std::string& file) {
    if (bytes.size() > largestArchive) return Fault{FaultNumber::scoreTooLarge, {file}, {"16 MiB"}};
    const Archive archive = open(bytes);
    if (!archive) return Fault{FaultNumber::brokenArchive, {file}, {}};
    const Fault none{FaultNumber::archivePath, {file}, {containerName}};
    const auto container = entry(archive.get(), containerName, largestContainer, none);
    if (!container) return container.fault();
    const auto path = rootPath(*container, file + '/' + containerName);
    if (!path) return path.fault();
    return entry(archive.get(), *path, largestScore,
                 {FaultNumber::archivePath, {file}, {cutText(*path, longestShown)}});
}

} // namespace piolo::score
