// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/atomic_file.h"
#include "journal/groups/click_group.h"
#include "journal/groups/notes_group.h"
#include "journal/groups/passage_groups.h"
#include "journal/groups/scale_group.h"
#include "journal/passage_file/passage_file.h"

namespace piolo::journal {

namespace {

using Json = nlohmann::ordered_json;

Json jsonOf(const Piece& piece) {
    Json object{{"id", piece.id.text()}, {"name", piece.name}, {"instrument", piece.instrument}};
    if (piece.due) object["due"] = piece.due->text();
    if (!piece.composer.empty()) object["composer"] = piece.composer;
    if (piece.transposition != 0) object["transposition"] = piece.transposition;
    if (piece.bars != 0) object["bars"] = piece.bars;
    if (piece.music != PieceMusic{}) object["music"] = groupOf(piece.music);
    if (!piece.notes.empty()) object["notes"] = piece.notes;
    return object;
}

Json jsonOf(const Passage& passage) {
    Json object{{"id", passage.id.text()}};
    object["title"] = groupOf(passage.title);
    object["music"] = groupOf(passage.music);
    object["tempi"] = groupOf(passage.tempi);
    if (passage.click != ClickPattern{}) object["click"] = groupOf(passage.click);
    if (passage.manner != Manner{}) object["manner"] = groupOf(passage.manner);
    if (!passage.notes.empty()) object["notation"] = groupOf(passage.notes);
    if (passage.scale) object["scale"] = groupOf(*passage.scale);
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
