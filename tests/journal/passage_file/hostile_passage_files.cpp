// SPDX-License-Identifier: GPL-3.0-or-later
#include "hostile_passage_files.h"

#include "journal/passage_file/passage_file.h"

#include <stdexcept>

namespace piolo::test {

namespace {

using enum FaultNumber;

const std::string piece = "00000000000000050000000000000001";
const std::string first = "00000000000000070000000000000001";
const std::string second = "00000000000000070000000000000002";

HostileFile value(const std::string& from, const std::string& to, const std::string& key,
                  const std::string& shown, bool schemaSees = true) {
    return {from, to, passageValue, 7, {key, shown}, schemaSees};
}

} // namespace

std::string goodPassageFile() {
    PassageSet set;
    set.pieces.push_back({{5, 1}, "Ferrywake Suite", "Clarinet in B♭", Date{2026, 5, 9}});
    Passage passage;
    passage.id = {7, 1};
    passage.title = {"Letter C", {5, 1}};
    passage.music.pickup = {1, 8};
    passage.tempi.start = Tempo::bpm(61);
    set.passages.push_back(passage);
    passage.id = {7, 2};
    passage.title = {"Trio", {}};
    passage.music.firstBar = 65;
    set.passages.push_back(passage);
    return journal::passageFileText(set);
}

std::vector<HostileFile> hostileFiles() {
    const std::string longName(journal::longestName + 1, 'x');
    return {
        {R"("v": 1,)", "", passageKeyMissing, 0, {"v"}},
        {R"("v": 1)", R"("v": 0)", passageValue, 0, {"v", "0"}},
        {R"("v": 1)", R"("v": "1")", passageValue, 0, {"v", R"("1")"}},
        {R"("v": 1)", R"("v": 2)", newerPassageFile, 0, {"2"}},
        {R"("pieces": [)", R"("songs": [)", passageKeyMissing, 0, {"pieces"}},
        {R"("passages": [)", R"("pasages": [)", passageKeyMissing, 0, {"passages"}},
        {R"({"id":")" + piece + R"(",)", "{", passageKeyMissing, 4, {"id"}},
        {R"("name":"Ferrywake Suite",)", "", passageKeyMissing, 4, {"name"}},
        {R"("Ferrywake Suite")", "7", passageValue, 4, {"name", "7"}},
        {"Ferrywake Suite", longName, passageFileTooLarge, 4, {"4096 letters in a name"}},
        {"Clarinet in B♭", longName, passageFileTooLarge, 4, {"4096 letters in a name"}},
        {R"("2026-05-09")", "null", passageValue, 4, {"due", "null"}},
        {R"("2026-05-09")", R"("9 May")", passageValue, 4, {"due", R"("9 May")"}},
        {R"("2026-05-09")", R"("2026-02-30")", passageValue, 4, {"due", R"("2026-02-30")"}, false},
        {R"({"id":")" + first, R"({"id":"7)", passageValue, 7, {"id", R"("7")"}},
        {R"({"id":")" + first,
         R"({"id":")" + std::string(32, '0'),
         passageValue,
         7,
         {"id", '"' + std::string(32, '0') + '"'}},
        {R"({"id":")" + second, R"({"id":")" + first, idTwice, 8, {first}, false},
        {R"({"id":")" + second, R"({"id":")" + piece, idTwice, 8, {piece}, false},
        {R"("piece":")" + piece, R"("piece":")" + second, pieceNotInFile, 7, {"Letter C", second}, false},
        {R"("name":"Letter C",)", "", passageKeyMissing, 7, {"title.name"}},
        {"Letter C", longName, passageFileTooLarge, 7, {"4096 letters in a name"}},
        {R"("title":{"name":"Trio"})", R"("title":"Trio")", passageValue, 8, {"title", R"("Trio")"}},
        {R"("title":{"name":"Trio"},)", "", passageKeyMissing, 8, {"title"}},
        value(R"("subdivision":1)", R"("subdivision":9)", "music.subdivision", "9"),
        value(R"("meter":"4/4")", R"("meter":"four")", "music.meter", R"("four")"),
        value(R"("meter":"4/4")", R"("meter":"4/3")", "music.meter", R"("4/3")", false),
        value(R"("beat":"1/4")", R"("beat":"3/8")", "music.beat", R"("3/8")", false),
        value(R"("pickup":"1/8")", R"("pickup":"9/8")", "music.pickup", R"("9/8")", false),
        value(R"("landing":true)", R"("landing":1)", "music.landing", "1"),
        value(R"("start":61000)", R"("start":61000.5)", "tempi.start", "61000.5"),
        value(R"("start":61000)", R"("start":9999)", "tempi.start", "9999"),
        value(R"("start":61000)", R"("start":121000)", "tempi.start", "121000", false),
        value(R"("start":61000)", R"("start":39000)", "tempi.floor", "40000", false),
        value(R"("step":"bpm")", R"("step":"beats")", "tempi.step", R"("beats")"),
        {R"("cleanRuns":5})", R"("cleanRuns":5},"click":{})", passageKeyMissing, 7, {"click.on"}},
        {R"("cleanRuns":5})", R"("cleanRuns":5},"click":[])", passageValue, 7, {"click", "[]"}},
    };
}

std::string changed(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    if (at == std::string::npos) throw std::runtime_error("not in the file: " + from);
    return text.replace(at, from.size(), to);
}

} // namespace piolo::test
