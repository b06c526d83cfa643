// SPDX-License-Identifier: GPL-3.0-or-later
#include "room_table.h"

#include <fstream>
#include <iterator>
#include <regex>
#include <sstream>

std::string sourceText(const std::string& path) {
    std::ifstream in(std::string(PIOLO_SOURCE_DIR) + "/" + path);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::map<std::string, std::set<std::string>> roomTable() {
    std::map<std::string, std::set<std::string>> table;
    const std::string text = sourceText("src/rooms.cmake");
    const std::regex call(R"(\nadd_room\((\w+)(?: LITE)?(?: SEES ([\w ]+?))?(?: OUTSIDE [^)]*)?\))");
    for (std::sregex_iterator it(text.begin(), text.end(), call), end; it != end; ++it) {
        auto& seen = table[(*it)[1]];
        std::istringstream words((*it)[2]);
        for (std::string room; words >> room;) seen.insert(room);
    }
    std::set<std::string> all;
    for (const auto& [room, seen] : table) all.insert(room);
    table["app"] = all;
    return table;
}
