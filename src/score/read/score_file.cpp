// SPDX-License-Identifier: GPL-3.0-or-later
#include "score/read/score_file.h"

#include "files/path_ending.h"
#include "files/whole_file.h"
#include "score/read/archive.h"
#include "score/read/limits.h"

#include <algorithm>
#include <array>

namespace piolo::score {

bool isScoreFile(std::string_view path) noexcept {
    constexpr std::array<std::string_view, 3> endings{".musicxml", ".xml", ".mxl"};
    return std::ranges::any_of(endings, [&](auto ending) { return files::endsIn(path, ending); });
}

Reading readScore(std::string_view bytes, const std::string& file) {
    if (!isArchive(bytes)) return readMusicXml(bytes, file);
    const auto xml = unpackedScore(bytes, file);
    if (!xml) return {{}, {xml.fault()}};
    return readMusicXml(*xml, file);
}

Reading readScoreFile(const std::string& path) {
    const auto bytes = files::wholeFile(path, largestScore + 1);
    if (!bytes) return {{}, {bytes.fault()}};
    return readScore(*bytes, path);
}

} // namespace piolo::score
