// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/archive.h"

#include "files/plugin.h"
#include "score/plugin/zip_functions.h"
#include "score/read/encoding.h"
#include "score/read/limits.h"
#include "score/read/xml_text.h"

#include <algorithm>

namespace piolo::score {

namespace {

constexpr const char* containerName = "META-INF/container.xml";
constexpr std::size_t longestShown = 60;

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
    const auto zip = files::pluginFunctions<ZipFunctions>();
    if (!zip) return zip.fault();
    const auto& functions = **zip;
    const Fault none{FaultNumber::archivePath, {file}, {containerName}};
    const auto container = functions.entry(bytes, containerName, largestContainer, none);
    if (!container) return container.fault();
    const auto path = rootPath(*container, file + '/' + containerName);
    if (!path) return path.fault();
    return functions.entry(bytes, *path, largestScore,
                           {FaultNumber::archivePath, {file}, {cutText(*path, longestShown)}});
}

} // namespace piolo::score
