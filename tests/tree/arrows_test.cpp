// SPDX-License-Identifier: GPL-3.0-or-later
#include "room_table.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <regex>
#include <vector>

namespace fs = std::filesystem;

namespace {

struct Include {
    std::string file;
    std::string room;
    std::string header;
    bool quoted = false;
};

std::vector<Include> includesOf(const std::string& text, const std::string& file, const std::string& room) {
    std::vector<Include> found;
    const std::regex line(R"re((?:^|\n)[ \t]*#[ \t]*include[ \t]*([<"])([^">]+)[">])re");
    for (std::sregex_iterator it(text.begin(), text.end(), line), end; it != end; ++it)
        found.push_back({file, room, (*it)[2], (*it)[1] == "\""});
    return found;
}

std::vector<Include> allIncludes() {
    std::vector<Include> all;
    const fs::path src = fs::path(PIOLO_SOURCE_DIR) / "src";
    for (const auto& entry : fs::recursive_directory_iterator(src)) {
        const auto suffix = entry.path().extension();
        if (suffix != ".h" && suffix != ".cpp") continue;
        const fs::path relative = fs::relative(entry.path(), src);
        for (auto& include : includesOf(sourceText("src/" + relative.string()), relative.string(),
                                        relative.begin()->string()))
            all.push_back(std::move(include));
    }
    return all;
}

/// Core has the standard calendar in this file, and no clock there or elsewhere.
const std::string calendarFile = "core/time/date.cpp";

/// What is wrong with an include, or "".
std::string complaint(const Include& include, const std::map<std::string, std::set<std::string>>& table) {
    static const std::set<std::string> qtRooms{"text",    "practice", "device", "plots",   "pictures",
                                               "command", "models",   "app",    "drawings"};
    static const std::regex qt("^(Q[A-Z].*|qt.*|Qt.*)");
    static const std::set<std::string> noWorld{"thread",     "mutex",        "fstream",
                                               "filesystem", "chrono",       "ctime",
                                               "future",     "shared_mutex", "condition_variable"};
    if (!table.contains(include.room)) return "is in a room that src/rooms.cmake does not have";
    if (include.quoted) {
        const std::string room = include.header.substr(0, include.header.find('/'));
        const bool own = room == include.room || include.header.find('/') == std::string::npos;
        return own || table.at(include.room).contains(room) ? "" : "an arrow the table does not have";
    }
    if (std::regex_match(include.header, qt) && !qtRooms.contains(include.room))
        return "Qt is not for this room";
    if (include.header.starts_with("nlohmann") && include.room != "journal")
        return "JSON is the journal's alone";
    if (include.header == "zlib.h" && include.room != "journal") return "checksums are the journal's alone";
    if ((include.header.starts_with("pugi") || include.header.starts_with("zip")) && include.room != "score")
        return "XML and archives are the score's alone";
    if (include.header.starts_with("poppler") && include.room != "pictures")
        return "PDF is the pictures' alone";
    if (include.header.starts_with("rtmidi") && include.room != "device")
        return "MIDI ports are the device's alone";
    if (include.header.starts_with("doctest")) return "tests stay in tests";
    if (include.header == "chrono" && include.file == calendarFile) return "";
    if (noWorld.contains(include.header) && (include.room == "core" || include.room == "engine"))
        return "no threads, files or clocks in core and engine";
    return "";
}

} // namespace

TEST_CASE("every include is allowed by the table") {
    const auto table = roomTable();
    REQUIRE(table.size() == 14);
    const auto includes = allIncludes();
    REQUIRE(includes.size() > 100);
    for (const auto& include : includes) {
        INFO(include.file << " includes " << include.header);
        CHECK(complaint(include, table) == "");
    }
}

TEST_CASE("the scan of includes can fail") {
    const auto table = roomTable();
    for (const auto* text :
         {"#include <QString>", "#include \"engine/mix.h\"", "#include <nlohmann/json.hpp>",
          "#include <zlib.h>", "#include <pugixml.hpp>", "#include <zip.h>", "#include <poppler-qt6.h>",
          "#include <rtmidi/RtMidi.h>", "  #  include <thread>", "int x;\n#include <doctest/doctest.h>"}) {
        INFO(text);
        const auto found = includesOf(text, "core/planted.h", "core");
        REQUIRE(found.size() == 1);
        CHECK(complaint(found.front(), table) != "");
    }
    CHECK(complaint(includesOf("#include \"core/tempo.h\"", "engine/x.h", "engine").front(), table) == "");
}

TEST_CASE("core uses the calendar and reads no clock") {
    const std::string text = sourceText("src/" + calendarFile);
    REQUIRE(text.find("year_month_day") != std::string::npos);
    for (const auto* clock : {"_clock", "now(", "current_zone", "time("}) {
        INFO(clock);
        CHECK(text.find(clock) == std::string::npos);
    }
    const auto found = includesOf("#include <chrono>", "core/time/timestamp.cpp", "core");
    CHECK(complaint(found.front(), roomTable()) != "");
}
