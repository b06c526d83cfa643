// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facts/passage_groups.h"
#include "core/facts/piece_members.h"
#include "files/atomic_file.h"
#include "journal/json/json_writing.h"
#include "journal/passage_file/passage_file.h"

namespace piolo::journal {

namespace {

using Json = JsonWriting::Json;

template <typename Item>
Json jsonOf(const Item& item) {
    Json object{{"id", item.id.text()}};
    write(object, item);
    return object;
}

template <typename Item>
std::string linesOf(const std::vector<Item>& items) {
    std::string lines;
    for (const Item& item : items) {
        lines += lines.empty() ? "\n" : ",\n";
        lines += jsonOf(item).dump(-1, ' ', false, Json::error_handler_t::replace);
    }
    return lines.empty() ? lines : lines + '\n';
}

} // namespace

std::string passageFileText(const PassageSet& set) {
    return "{\n\"v\": " + std::to_string(passageFileVersion) + ",\n\"pieces\": [" + linesOf(set.pieces) +
           "],\n\"passages\": [" + linesOf(set.passages) + "]\n}\n";
}

Done writePassageFile(const std::string& path, const PassageSet& set) {
    const std::string text = passageFileText(set);
    const auto readBack = readPassages(text, path);
    if (!readBack) return readBack.fault();
    return files::replaceFile(path, std::as_bytes(std::span<const char>(text)));
}

} // namespace piolo::journal
