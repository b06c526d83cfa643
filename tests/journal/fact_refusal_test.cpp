// SPDX-License-Identifier: GPL-3.0-or-later
// Lines that nobody should have written: one fault each, and never worse.
#include "bare_line.h"
#include "journal/fact_line.h"
#include "random_facts.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <functional>
#include <nlohmann/json.hpp>

using namespace piolo;
using namespace piolo::journal;
using nlohmann::json;
using piolo::test::bareLine;
using piolo::test::RandomFacts;
using piolo::test::seedOfTest;

namespace {

const Place place{"practice/journal/x.jsonl", 17};

Fault faultOf(const std::string& line) {
    const auto read = fromLine(line, place);
    REQUIRE_FALSE(read.ok());
    CHECK(read.fault().place == place);
    return read.fault();
}

/// A line of every kind with every optional key.
std::vector<json> fullLines() {
    Music music;
    music.meter = Meter::parse("7/8", "1/8", "2+2+3").value();
    music.pickup = {1, 8};
    ClickPattern click;
    click.accents = {Accent::strong};
    click.swing = {2, 1};
    click.breaths = {{3, 1, 2}};
    const std::vector<FactBody> bodies{
        RunFact{{0, 1}, Tempo::bpm(60), Mark::voided, Reason::stopped, RunKind::silent, 5, {{1, 1, 1}}},
        LateMissFact{{0, 1}, {0, 2}},
        DoubtFact{{0, 1}, {{0, 2}}},
        TempoFact{{0, 1}, Tempo::bpm(60), Reason::hand},
        BackFact{{0, 1}, {0, 2}},
        PassageFact{{0, 1}, Title{"Trio", {0, 5}}, music, Tempi{}, click},
        PieceFact{{0, 1},
                  "March",
                  "Oboe",
                  std::optional<Date>{Date{2026, 5, 30}},
                  "Ada Finch",
                  -2,
                  148,
                  PieceMusic{music.meter, Tempo::bpm(132)},
                  "Key signature changes at D"},
        RemovalFact{{0, 1}, true},
        SettingsFact{},
        StageFact{{0, 1}, Stage::inContext},
        NoteFact{{0, 1}, {0, 2}, "Reed too hard"},
        RunThroughFact{{0, 1}, Tempo::bpm(96), 180'000, true, {{31, 44'000}}}};
    std::vector<json> lines;
    for (const auto& body : bodies) {
        Fact fact{{0, 9}, "0123456789abcdef0123456789abcdef", 1, 1, {}, body};
        lines.push_back(json::parse(bareLine(fact)));
        CHECK(fromLine(lines.back().dump(), place).ok());
    }
    return lines;
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

/// Whether a value that fits no other key fits this one.
bool fits(const std::string& key, const json& value) {
    if (value.is_null()) return key == "due";
    if (value == -7) return key == "transposition";
    if (value.is_boolean())
        return isOneOf(key, {"landing", "music.landing", "removed", "playOn", "finished"});
    if (value.is_string())
        return isOneOf(key, {"name", "instrument", "composer", "notes", "title.name", "text"});
    return value == json::array() &&
           isOneOf(key, {"spots", "runs", "click.accents", "click.breaths", "stops"});
}

std::string nested(const char* open, const char* close, int depth) {
    std::string text;
    for (int i = 0; i < depth; ++i) text += open;
    for (int i = 0; i < depth; ++i) text += close;
    return text;
}

} // namespace

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
                    CHECK(fromLine(changed.dump(), place).ok());
                    continue;
                }
                const Fault fault = faultOf(changed.dump());
                if (key == "v" && value.is_number_unsigned()) continue; // out of range is a bad value too
                if (key == "kind" && value == "x") {
                    CHECK(fault == Fault{FaultNumber::unknownKind, place, {"x"}});
                    continue;
                }
                CHECK((fault.number == FaultNumber::badFactValue || fault.number == FaultNumber::badFact));
                CHECK(fault.arguments.at(0).starts_with(key));
            }
        });
}

TEST_CASE("a missing key is one fault that names it, unless it may be missing") {
    for (const json& line : fullLines())
        forEachKey(line, [&line](const json::json_pointer& pointer) {
            json changed = line;
            changed[pointer.parent_pointer()].erase(pointer.back());
            const std::string key = dotted(pointer);
            CAPTURE(changed.dump());
            const bool mayBeMissing =
                isOneOf(key, {"as",           "spots",         "title", "title.piece", "music",
                              "music.groups", "music.pickup",  "tempi", "click",       "click.accents",
                              "click.swing",  "click.breaths", "name",  "instrument",  "due",
                              "composer",     "transposition", "bars",  "music.tempo", "notes",
                              "reactionMs",   "stops"}) ||
                (key == "reason" && line["kind"] == "run") ||
                (key == "tempo" && line["kind"] == "runThrough");
            if (mayBeMissing)
                CHECK(fromLine(changed.dump(), place).ok());
            else
                CHECK(faultOf(changed.dump()) == Fault{FaultNumber::badFact, place, {key}});
        });
}

TEST_CASE("a run is a try or something else, not both; a piece's notes and a run's are bounded in bytes") {
    json run = fullLines()[0];
    run["try"] = false;
    CHECK(fromLine(run.dump(), place).ok());
    run["try"] = true;
    CHECK(faultOf(run.dump()).arguments.at(0) == "as");
    json piece = fullLines()[6];
    piece["notes"] = std::string(2000, 'a');
    CHECK(fromLine(piece.dump(), place).ok());
    piece["notes"] = std::string(2001, 'a');
    CHECK(faultOf(piece.dump()).arguments.at(0) == "notes");
    json note = fullLines()[10];
    note["text"] = std::string(500, 'a');
    CHECK(fromLine(note.dump(), place).ok());
    note["text"] = std::string(501, 'a');
    CHECK(faultOf(note.dump()).arguments.at(0) == "text");
    json through = fullLines()[11];
    through["stops"] = json(std::vector<json>(999, json::array({1, 1})));
    CHECK(fromLine(through.dump(), place).ok());
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
        CHECK(fromLine(line.dump(), place).ok());
        line[json::json_pointer(pointer)] = bad;
        CAPTURE(line.dump());
        const Fault expected{
            FaultNumber::badFactValue, place, {dotted(json::json_pointer(pointer)), bad.dump()}};
        CHECK(faultOf(line.dump()) == expected);
    }
}

TEST_CASE("a newer format is told before anything else in it is looked at") {
    CHECK(faultOf(R"({"v":2,"kind":["not","text"]})") == Fault{FaultNumber::newerFormat, place, {"2"}});
    CHECK(faultOf(R"({"v":1,"kind":"lesson"})") == Fault{FaultNumber::unknownKind, place, {"lesson"}});
}

TEST_CASE("what is no JSON object is one fault, whatever it is") {
    using enum FaultNumber;
    const std::vector<std::pair<std::string, FaultNumber>> lines{
        {"", badJson},
        {"{", badJson},
        {"hello", badJson},
        {"{}", badFact},
        {"[]", badFact},
        {"7", badFact},
        {"null", badFact},
        {R"({"v":NaN})", badJson},
        {R"({"v":Infinity})", badJson},
        {R"({"v":1e999})", badJson},
        {R"({"v":1,})", badJson},
        {R"({"v":1} {"v":1})", badJson},
        {R"({"v":"\ud800"})", badJson},
        {std::string("{\"v\":1\0}", 8), badJson},
        {std::string(200, '\0'), badJson},
        {"{\"v\":\"\xC3\x28\"}", notUtf8},
        {"\xFF\xFE{\0}", notUtf8},
        {R"({"v":123456789012345678901234567890})", badFactValue},
        {R"({"v":1.0})", badFactValue},
        {R"({"v":0})", badFactValue},
        {R"({"v":1,"kind":")" + std::string(60'000, 'k') + "\"}", unknownKind},
        {nested("[", "]", 30'000), badJson},
        {nested(R"({"a":)", "}", 10'000), badJson},
        {nested("[", "", 65'000), badJson},
        {"{\"v\":1,\"x\":" + nested("[", "]", 17) + "}", badJson},
        {std::string(longestLine + 1, ' '), lineTooLong},
    };
    for (const auto& [line, number] : lines) {
        CAPTURE(line.substr(0, 80));
        const Fault fault = faultOf(line);
        CHECK(fault.number == number);
        for (const auto& argument : fault.arguments) CHECK(argument.size() <= 100);
    }
}

TEST_CASE("a line cut off anywhere is one fault") {
    for (const json& whole : fullLines()) {
        const std::string line = whole.dump();
        for (std::size_t length = 0; length < line.size(); ++length) {
            CAPTURE(length);
            CHECK(faultOf(line.substr(0, length)).number == FaultNumber::badJson);
        }
    }
}

TEST_CASE("bytes changed at random give a fact or one fault") {
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    int refused = 0;
    for (int round = 0; round < 20'000; ++round) {
        std::string line = toLine(random.fact(static_cast<std::size_t>(random.number(0, 8))));
        for (auto changes = random.number(1, 3); changes > 0; --changes)
            line[static_cast<std::size_t>(random.number(0, static_cast<std::int64_t>(line.size()) - 1))] =
                static_cast<char>(random.number(0, 255));
        const auto read = fromLine(line, place);
        if (read.ok())
            CHECK(fromLine(toLine(*read), place).ok());
        else
            ++refused;
    }
    CHECK(refused > 10'000);
}
