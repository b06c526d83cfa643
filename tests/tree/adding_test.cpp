// SPDX-License-Identifier: GPL-3.0-or-later
// DEVELOPERS.md names the files to touch for a new screen, stage, voice and so on: those that contain an
// existing one.
#include "room_table.h"

#include <doctest/doctest.h>

#include <cctype>
#include <filesystem>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

/// One section of "To add a …": the words of an existing member, and the files that should contain them.
struct Adding {
    std::string what;
    std::vector<std::string> words;
    std::set<std::string> files;
};

std::vector<std::string> codeIn(const std::string& text) {
    std::vector<std::string> found;
    const std::regex code("`([^`]+)`");
    for (std::sregex_iterator it(text.begin(), text.end(), code), end; it != end; ++it)
        found.push_back((*it)[1]);
    return found;
}

/// The part of a bullet before its colon: the files.
void addBullet(Adding& adding, const std::string& line) {
    for (const std::string& file : codeIn(line.substr(0, line.find(": ")))) adding.files.insert(file);
}

std::vector<Adding> addings(const std::string& page) {
    std::vector<Adding> list;
    bool inside = false;
    for (std::size_t begin = 0; begin < page.size();) {
        const std::size_t end = page.find('\n', begin);
        const std::string line = page.substr(begin, end - begin);
        begin = end == std::string::npos ? page.size() : end + 1;
        if (line.starts_with("## ")) inside = line == "## To add a …";
        const auto sample = line.find(", such as ");
        if (inside && line.starts_with("### ") && sample != std::string::npos)
            list.push_back({line.substr(4, sample - 4), codeIn(line.substr(sample)), {}});
        else if (inside && line.starts_with("- `") && !list.empty())
            addBullet(list.back(), line);
    }
    return list;
}

bool holds(const std::string& text, const std::string& word) {
    const auto partOfWord = [](char c) {
        return c == '_' || std::isalnum(static_cast<unsigned char>(c)) != 0;
    };
    for (auto at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
        const auto after = at + word.size();
        if ((at == 0 || !partOfWord(text[at - 1])) && (after == text.size() || !partOfWord(text[after])))
            return true;
    }
    return false;
}

/// The files of src, qml and the schemas that contain one of the words or are named by one.
std::set<std::string> filesWith(const std::vector<std::string>& words) {
    std::set<std::string> found;
    for (const auto* root : {"src", "qml", "docs"})
        for (const auto& entry : fs::recursive_directory_iterator(fs::path(PIOLO_SOURCE_DIR) / root)) {
            const std::string suffix = entry.path().extension().string();
            if (!entry.is_regular_file()) continue;
            const bool isRead = std::set<std::string>{".h", ".cpp", ".inc", ".qml", ".json"}.contains(suffix);
            const std::string name = fs::relative(entry.path(), PIOLO_SOURCE_DIR).string();
            const std::string text = isRead ? sourceText(name) : std::string();
            for (const std::string& word : words)
                if (entry.path().stem() == word || holds(text, word)) found.insert(name);
        }
    return found;
}

std::string listed(const std::set<std::string>& files) {
    std::string text;
    for (const std::string& file : files) text += file + "\n";
    return text;
}

} // namespace

TEST_CASE("what a new verb, screen, key, language, stage, run kind, voice or setting touches is what the "
          "page lists") {
    const auto list = addings(sourceText("DEVELOPERS.md"));
    CHECK(list.size() >= 8);
    for (const Adding& adding : list) {
        CAPTURE(adding.what);
        CHECK_FALSE(adding.words.empty());
        CHECK_FALSE(adding.files.empty());
        CHECK(listed(filesWith(adding.words)) == listed(adding.files));
    }
}
