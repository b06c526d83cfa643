// SPDX-License-Identifier: GPL-3.0-or-later
// Lines that no program should have written: one fault each, nothing worse.
#include "full_lines.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <functional>
#include <nlohmann/json.hpp>

using namespace piolo;
using namespace piolo::journal;
using nlohmann::json;
using piolo::test::fullLines;

namespace {

const FaultLocation location{"practice/journal/x.jsonl", 17};

Fault faultOf(const std::string& line) {
    const auto read = fromLine(line, location);
    REQUIRE_FALSE(read.ok());
    CHECK(read.fault().location == location);
    return read.fault();
}

/// Calls `change` with a pointer to each value in turn: "/tempi/start", …
void forEachKey(const json& line, const std::function<void(const json::json_pointer&)>& change) {
    for (const auto& [key, value] : line.items()) {
        const json::json_pointer pointer("/" + key);
        change(pointer);
        if (value.is_object())
            for (const auto& [inner, ignored] : value.items()) change(pointer / inner);
    }
}

std::string dotted(const json::json_pointer& pointer) {
    std::string text = pointer.to_string().substr(1);
    std::replace(text.begin(), text.end(), '/', '.');
    return text;
}

bool isOneOf(const std::string& key, std::initializer_list<const char*> keys) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

/// True if a value that fits no other key fits this one.
bool fits(const std::string& key, const json& value) {
    if (value.is_null()) return key == "due";
    if (value == -7) return isOneOf(key, {"transposition", "days"});
    if (value.is_boolean())
        return isOneOf(
            key, {"landing", "music.landing", "removed", "playOn", "finished", "entered", "tempi.gentle"});
    if (value.is_string())
        return isOneOf(key, {"name", "instrument", "composer", "notes", "title.name", "text",
                             "manner.fingering", "scale.instrument", "scales.instrument"});
    return value == json::array() &&
           isOneOf(key, {"spots", "runs", "click.accents", "click.breaths", "stops", "notation"});
}

} // namespace

TEST_CASE("a line of every kind with every possible key is read") {
    for (const json& line : fullLines()) CHECK(fromLine(line.dump(), location).ok());
}

TEST_CASE("a value of the wrong type, for every key of every kind, is one fault that names the key") {
    const std::vector<json> wrong{nullptr,
                                  true,
                                  "x",
                                  -7,
                                  1.5,
                                  1e300,
                                  18'446'744'073'709'551'615ULL,
                                  json::array(),
                                  json::array({1, 2, 3}),
                                  json::object(),
                                  json{{"x", 1}}};
    for (const json& line : fullLines())
        forEachKey(line, [&](const json::json_pointer& pointer) {
            for (const json& value : wrong) {
                json changed = line;
                changed[pointer] = value;
                const std::string key = dotted(pointer);
                CAPTURE(changed.dump());
                if (fits(key, value)) {
                    CHECK(fromLine(changed.dump(), location).ok());
                    continue;
                }
                const Fault fault = faultOf(changed.dump());
                if (key == "v" && value.is_number_unsigned()) continue; // out of range is also a bad value
                if (key == "kind" && value == "x") {
                    CHECK(fault == Fault{FaultNumber::unknownKind, location, {"x"}});
                    continue;
                }
                CHECK((fault.number == FaultNumber::badFactValue || fault.number == FaultNumber::badFact));
                CHECK(fault.arguments.at(0).starts_with(key));
            }
        });
}

TEST_CASE("a missing key is one fault that names it, unless it is optional") {
    for (const json& line : fullLines())
        forEachKey(line, [&line](const json::json_pointer& pointer) {
            json changed = line;
            changed[pointer.parent_pointer()].erase(pointer.back());
            const std::string key = dotted(pointer);
            CAPTURE(changed.dump());
            const bool mayBeMissing = isOneOf(key, {"as",
                                                    "spots",
                                                    "title",
                                                    "title.piece",
                                                    "music",
                                                    "music.groups",
                                                    "music.pickup",
                                                    "tempi",
                                                    "click",
                                                    "click.accents",
                                                    "click.swing",
                                                    "click.breaths",
                                                    "name",
                                                    "instrument",
                                                    "due",
                                                    "composer",
                                                    "transposition",
                                                    "bars",
                                                    "music.tempo",
                                                    "notes",
                                                    "reactionMs",
                                                    "stops",
                                                    "entered",
                                                    "title.origin",
                                                    "tempi.gentle",
                                                    "manner",
                                                    "manner.group",
                                                    "manner.fingering",
                                                    "notation",
                                                    "scale",
                                                    "scale.instrument",
                                                    "scales",
                                                    "scales.instrument",
                                                    "scales.lowest",
                                                    "scales.highest",
                                                    "file"}) ||
                                      (key == "reason" && line["kind"] == "run") ||
                                      (key == "tempo" && line["kind"] == "runThrough") ||
                                      (key == "mark" && line["kind"] == "correction");
            if (mayBeMissing)
                CHECK(fromLine(changed.dump(), location).ok());
            else
                CHECK(faultOf(changed.dump()) == Fault{FaultNumber::badFact, location, {key}});
        });
}

TEST_CASE("a run is a try or something else, not both; a piece's notes and a run's are bounded in bytes") {
    json run = fullLines()[0];
    run["try"] = false;
    CHECK(fromLine(run.dump(), location).ok());
    run["try"] = true;
    CHECK(faultOf(run.dump()).arguments.at(0) == "as");
    json piece = fullLines()[6];
    piece["notes"] = std::string(2000, 'a');
    CHECK(fromLine(piece.dump(), location).ok());
    piece["notes"] = std::string(2001, 'a');
    CHECK(faultOf(piece.dump()).arguments.at(0) == "notes");
    json note = fullLines()[10];
    note["text"] = std::string(500, 'a');
    CHECK(fromLine(note.dump(), location).ok());
    note["text"] = std::string(501, 'a');
    CHECK(faultOf(note.dump()).arguments.at(0) == "text");
    json through = fullLines()[11];
    through["stops"] = json(std::vector<json>(999, json::array({1, 1})));
    CHECK(fromLine(through.dump(), location).ok());
    through["stops"].push_back(json::array({1, 1}));
    CHECK(faultOf(through.dump()).arguments.at(0) == "stops");
}

TEST_CASE("every bound holds: the value beyond it is refused, the value on it is not") {
    struct Row {
        std::size_t kind;
        const char* pointer;
        json good;
        json bad;
    };
    const std::vector<Row> rows{
        {0, "/tempo", 10'000, 9999},
        {0, "/tempo", 400'000, 400'001},
        {0, "/ms", 0, -1},
        {0, "/seq", 9'007'199'254'740'991, 9'007'199'254'740'992},
        {0, "/order", 0, -1},
        {0, "/spots", json::parse("[[-1,1]]"), json::parse("[[-2,1]]")},
        {0, "/spots", json::parse("[[3,32]]"), json::parse("[[3,33]]")},
        {0, "/spots", json::parse("[[3,1]]"), json::parse("[[3,0]]")},
        {0, "/spots", json::parse("[[3,1]]"), json::parse("[[3,1.0]]")},
        {0, "/spots", json::parse("[[3,1,999]]"), json::parse("[[3,1,1000]]")},
        {0, "/spots", json::parse("[[3,1,0]]"), json::parse("[[3,1,-1]]")},
        {0, "/spots", json::parse("[[3,1]]"), json::parse("[[3,1,2,3]]")},
        {0, "/mark", "clean", "Clean"},
        {0, "/id", "000000000000000000000000000000A1", "00000000000000000000000000000000"},
        {0, "/device", "000000000000000000000000000000a1", "laptop"},
        {0, "/at", "2026-03-01T18:04:05+01:00", "2026-03-01 18:04"},
        {0, "/as", "aside", "try"},
        {0, "/as", "context", ""},
        {3, "/reason", "offer", "stopped"},
        {6, "/transposition", -36, -37},
        {6, "/transposition", 36, 37},
        {6, "/bars", 9999, 10'000},
        {6, "/bars", 0, -1},
        {6, "/music/meter", "7/8", "7/7"},
        {6, "/music/tempo", 400'000, 400'001},
        {5, "/music/subdivision", 8, 9},
        {5, "/music/subdivision", 1, 0},
        {5, "/music/firstBar", 9999, 10'000},
        {5, "/music/bars", 999, 1000},
        {5, "/music/countInBars", 4, 5},
        {5, "/music/breathBeats", 8, 9},
        {5, "/music/meter", "7/8", "7/7"},
        {5, "/music/beat", "1/8", "1/4"},
        {5, "/music/beat", "1/8", ""},
        {5, "/music/groups", "3+4", "2+2+2"},
        {5, "/music/pickup", "6/8", "7/8"},
        {5, "/tempi/drop", 100, 101},
        {5, "/tempi/climb", 1, 0},
        {5, "/tempi/cleanRuns", 100, 101},
        {5, "/tempi/step", "notches", "steps"},
        {5, "/tempi/start", 120'000, 120'001},
        {5, "/tempi/floor", 60'000, 60'001},
        {5, "/click/on", "offbeats", "upbeats"},
        {5, "/click/accents", json::parse(R"(["strong","group","plain","silent"])"),
         json::parse(R"(["loud"])")},
        {5, "/click/swing", "3:1", "4:1"},
        {5, "/click/swung", "sixteenths", "quarters"},
        {5, "/click/barsOn", 99, 0},
        {5, "/click/barsOff", 0, 100},
        {5, "/click/silentBars", 100, 101},
        {5, "/click/leftOutBeats", 0, -1},
        {5, "/click/seed", 999'999'999, 1'000'000'000},
        {5, "/click/breaths", json::parse("[[-1,1,1],[0,32,8]]"), json::parse("[[-2,1,1]]")},
        {5, "/click/breaths", json::parse("[[3,1,2],[3,2,1]]"), json::parse("[[3,1,2],[3,1,1]]")},
        {5, "/click/breaths", json::parse("[[3,1,8]]"), json::parse("[[3,1,9]]")},
        {5, "/click/breathBelow", 10'000, 9999},
        {6, "/due", "2028-02-29", "2027-02-29"},
        {8, "/gapMs", 30'000, 30'001},
        {8, "/pauseAfterRuns", 0, -1},
        {8, "/secureDays", 1, 0},
        {8, "/dayOpening", "start", ""},
        {8, "/reactionMs", 1000, 1001},
        {9, "/stage", "runThroughs", "clean"},
        {5, "/manner/articulation", "doubleTongued", "loud"},
        {5, "/manner/rhythm", "reversed", ""},
        {5, "/scale/tonic", "F#", "F sharp"},
        {5, "/scale/kind", "whole-half diminished", "loud"},
        {5, "/scale/range", "whole range", "three octaves"},
        {5, "/scale/pattern", "in turns of four", "thirds"},
        {5, "/scale/notes", 7, 8},
        {5, "/scale/notes", 1, 0},
        {8, "/scales/lowest", "A3", "A"},
        {8, "/scales/highest", "C#7", "c7"},
        {8, "/scales/spelling", 4095, 4096},
        {8, "/scales/order", "drawn", "lot"},
        {8, "/scales/seed", 999'999'999, 1'000'000'000},
        {5, "/manner/group", 8, 9},
        {5, "/manner/group", 2, 1},
        {5, "/notation", json::parse(R"x(["0/1 1/8 Bb4 70","0/1 1/8 D5 74 tT.>-()"])x"),
         json::parse(R"(["1/8 1/8 C4 60","0/1 1/8 C4 60"])")},
        {5, "/notation", json::parse(R"(["0/1 1/8 Fbbb0 0"])"), json::parse(R"(["0/1 1/8 H4 60"])")},
        {5, "/notation", json::array(), json::parse(R"(["0/1 1/8 C#b4 60"])")},
        {5, "/notation", json::array(), json::parse(R"(["0/1 0/1 C4 60"])")},
        {5, "/notation", json::array(), json::parse(R"(["0/1 2/16 C4 60"])")},
        {5, "/notation", json::array(), json::parse(R"(["0/1 1/8 C4 128"])")},
        {5, "/notation", json::array(), json::parse(R"(["0/1 1/8 C4 060"])")},
        {5, "/notation", json::array(), json::parse(R"(["0/1 1/8 C4 60 Tt"])")},
        {5, "/notation", json::array(), json::parse(R"([7])")},
        {12, "/beat", "3/8", "1/16"},
        {13, "/file", "0123456789abcdef0123456789abcdef.jpg", "../0123456789abcdef0123456789abc.jpg"},
        {13, "/left", 7000, 10'000},
        {13, "/width", 9900, 9901},
        {13, "/height", 9800, 9801},
        {11, "/ms", 0, -1},
        {11, "/tempo", 400'000, 400'001},
        {11, "/stops", json::parse("[[0,0],[9999,5]]"), json::parse("[[10000,5]]")},
        {11, "/stops", json::parse("[[3,5]]"), json::parse("[[3]]")},
    };
    const auto lines = fullLines();
    for (const auto& [kind, pointer, good, bad] : rows) {
        json line = lines[kind];
        line[json::json_pointer(pointer)] = good;
        CAPTURE(line.dump());
        CHECK(fromLine(line.dump(), location).ok());
        line[json::json_pointer(pointer)] = bad;
        CAPTURE(line.dump());
        const Fault expected{
            FaultNumber::badFactValue, location, {dotted(json::json_pointer(pointer)), bad.dump()}};
        CHECK(faultOf(line.dump()) == expected);
    }
}
