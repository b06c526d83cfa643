// SPDX-License-Identifier: GPL-3.0-or-later
// The tests that the documents name exist.
#include "room_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <regex>
#include <vector>

namespace fs = std::filesystem;

namespace {

/// `text` without what is in backquotes.
std::string withoutCode(const std::string& text) {
    std::string prose;
    bool code = false;
    for (const char c : text) {
        if (c == '`')
            code = !code;
        else if (!code)
            prose += c == '\n' ? ' ' : c;
    }
    return prose;
}

/// Everything in *italics* in a document: names of tests, possibly shortened with an ellipsis.
std::vector<std::string> namedTests(const std::string& document) {
    std::vector<std::string> pieces{""};
    const std::string prose = withoutCode(document);
    for (std::size_t i = 0; i < prose.size(); ++i) {
        if (prose.compare(i, 2, "\\*") == 0)
            pieces.back() += prose[++i];
        else if (prose[i] == '*')
            pieces.emplace_back();
        else
            pieces.back() += prose[i];
    }
    const std::string ellipsis = "…";
    std::vector<std::string> names;
    for (std::size_t i = 1; i < pieces.size(); i += 2) { // every second piece was between two asterisks
        std::string name = pieces[i];
        if (name.ends_with(ellipsis)) name.erase(name.size() - ellipsis.size());
        name.erase(name.find_last_not_of(' ') + 1);
        names.push_back(name);
    }
    return names;
}

/// The names of all test cases under tests/.
std::vector<std::string> testNames() {
    std::vector<std::string> names;
    const std::regex named(R"re(TEST_CASE(?:_FIXTURE)?\(\s*(?:\w+,\s*)?"((?:[^"\\]|\\.|"\s+")*)"\s*\))re");
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(PIOLO_SOURCE_DIR) / "tests")) {
        if (entry.path().extension() != ".cpp") continue;
        const std::string text = sourceText(fs::relative(entry.path(), PIOLO_SOURCE_DIR).generic_string());
        for (std::sregex_iterator it(text.begin(), text.end(), named), end; it != end; ++it)
            names.push_back(std::regex_replace((*it)[1].str(), std::regex(R"("\s+")"), ""));
    }
    return names;
}

} // namespace

TEST_CASE("every test named in the promises on journal, keys, the click and sets exists") {
    const auto names = testNames();
    REQUIRE(names.size() > 100);
    const std::map<std::string, std::size_t> atLeast{
        {"docs/journal.md", 31}, {"docs/keys.md", 31}, {"docs/click.md", 18}, {"docs/sets.md", 25}};
    for (const auto& [document, least] : atLeast) {
        const auto promised = namedTests(sourceText(document));
        REQUIRE(promised.size() >= least);
        for (const auto& promise : promised) {
            INFO(promise << " is named in " << document << " and is no test");
            CHECK(std::any_of(names.begin(), names.end(),
                              [&](const std::string& name) { return name.starts_with(promise); }));
        }
    }
}
