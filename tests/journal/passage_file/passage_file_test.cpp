// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/passage_file/passage_file.h"

#include "../../files/scratch_folder.h"
#include "hostile_passage_files.h"
#include "journal/lines/fact_line.h"
#include "random_set.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::journal;
using namespace piolo::test;

namespace {

Fault faultOf(const std::string& text) {
    const auto read = readPassages(text, "x.piolo.json");
    return read ? Fault{} : read.fault();
}

std::string repeated(const std::string& text, int times) {
    std::string all;
    for (int i = 0; i < times; ++i) all += text;
    return all;
}

} // namespace

TEST_CASE("every set comes back from its file as it was, and the same set gives the same bytes") {
    const unsigned seed = seedOfTest();
    CAPTURE(seed);
    RandomFacts random(seed);
    for (int i = 0; i < 100; ++i) {
        const PassageSet set = randomSet(random);
        const std::string text = passageFileText(set);
        const auto read = readPassages(text, "x.piolo.json");
        REQUIRE(read);
        CHECK(*read == set);
        CHECK(passageFileText(*read) == text);
    }
}

TEST_CASE("a piece or passage has a line of its own, and the file ends with a newline") {
    CHECK(
        goodPassageFile() ==
        R"({
"v": 1,
"pieces": [
{"id":"00000000000000050000000000000001","name":"Ferrywake Suite","instrument":"Clarinet in B♭","due":"2026-05-09"}
],
"passages": [
{"id":"00000000000000070000000000000001","title":{"name":"Letter C","piece":"00000000000000050000000000000001"},)"
        R"("music":{"meter":"4/4","beat":"1/4","subdivision":1,"pickup":"1/8","firstBar":1,"bars":4,"landing":true,)"
        R"("countInBars":1,"breathBeats":2},"tempi":{"start":61000,"target":120000,"floor":40000,"step":"bpm",)"
        R"("drop":4,"climb":2,"cleanRuns":5}},
{"id":"00000000000000070000000000000002","title":{"name":"Trio"},)"
        R"("music":{"meter":"4/4","beat":"1/4","subdivision":1,"pickup":"1/8","firstBar":65,"bars":4,"landing":true,)"
        R"("countInBars":1,"breathBeats":2},"tempi":{"start":61000,"target":120000,"floor":40000,"step":"bpm",)"
        R"("drop":4,"climb":2,"cleanRuns":5}}
]
}
)");
    CHECK(passageFileText({}) == "{\n\"v\": 1,\n\"pieces\": [],\n\"passages\": []\n}\n");
    CHECK(*readPassages(passageFileText({}), "") == PassageSet{});
}

TEST_CASE("one thing wrong is one fault that names the line and the key") {
    REQUIRE(readPassages(goodPassageFile(), ""));
    for (const HostileFile& hostile : hostileFiles()) {
        CAPTURE(hostile.to.substr(0, 80));
        const Fault fault = faultOf(changed(goodPassageFile(), hostile.from, hostile.to));
        CHECK(fault == Fault{hostile.number, {"x.piolo.json", hostile.line}, hostile.arguments});
    }
}

TEST_CASE("a file cut short at any byte is reported, and nothing is imported from it") {
    const std::string text = goodPassageFile();
    // Only without its last newline is it still complete.
    for (std::size_t length = 0; length + 2 <= text.size(); ++length)
        CHECK(faultOf(text.substr(0, length)).number == FaultNumber::notAPassageFile);
    CHECK(readPassages(text.substr(0, text.size() - 1), ""));
    CHECK(faultOf(text.substr(0, text.find("Letter"))).location.line == 7);
}

TEST_CASE("changing any byte gives a set or one fault") {
    const unsigned seed = seedOfTest();
    CAPTURE(seed);
    RandomFacts random(seed);
    const std::string good = goodPassageFile();
    for (std::size_t at = 0; at < good.size(); ++at) {
        std::string text = good;
        text[at] = static_cast<char>(random.number(0, 255));
        const auto read = readPassages(text, "x.piolo.json");
        if (read)
            CHECK(readPassages(passageFileText(*read), "")); // what was read can be passed on
        else
            CHECK(read.fault().location.file == "x.piolo.json");
    }
}

TEST_CASE("anything but a JSON object in UTF-8 is reported as not a passage file") {
    for (const std::string text : {"", " ", "[]", "7", "null", "\"x\"", "{", "{} {}", "{\"v\":1,}", "\xff",
                                   "{\"v\":1,\"x\":\"\xC0\x80\"}", "{\"x\":\"\\ud800\"}"})
        CHECK(faultOf(text).number == FaultNumber::notAPassageFile);
    CHECK(readPassages("\xEF\xBB\xBF" + goodPassageFile(), "")); // a byte order mark is accepted
    CHECK(faultOf("{\n\n\"v\": 1,\n oops").location.line == 4);
}

TEST_CASE("a journal line is not a passage file") {
    Fact fact;
    fact.id = {1, 2};
    fact.device = std::string(32, 'a');
    fact.body = RemovalFact{{3, 4}, true};
    CHECK(faultOf(toLine(fact)) == Fault{FaultNumber::passageKeyMissing, {"x.piolo.json", 0}, {"pieces"}});
}

TEST_CASE("unknown keys are ignored, and if a key occurs twice, the last one counts") {
    const PassageSet good = *readPassages(goodPassageFile(), "");
    const std::string more =
        changed(goodPassageFile(), R"("v": 1,)", R"("v": 1, "from": {"a": [1, {"b": 2}]},)");
    CHECK(*readPassages(changed(more, R"("landing":true)", R"("landing":true,"tune":"♪")"), "") == good);
    const std::string twice =
        changed(goodPassageFile(), R"("pieces": [)", R"("pieces": [7, {}, []], "pieces": [)");
    CHECK(*readPassages(twice, "") == good);
    CHECK(faultOf(changed(twice, R"("instrument":"Clar)", R"("instrument":4,"x":"Clar)")).location.line == 4);
}

TEST_CASE("in a file spread over more lines, a fault has the line on which the passage begins") {
    std::string text =
        changed(goodPassageFile(), R"("title":{"name":"Letter C")", "\n\n\"title\":{\"name\":\n\"Letter C\"");
    CHECK(faultOf(changed(text, R"("climb":2)", R"("climb":0)")).location.line == 7);
    const auto last = text.rfind(R"("climb":2)");
    CHECK(faultOf(text.replace(last, 9, R"("climb":0)")).location.line == 11);
}

TEST_CASE("there is a limit to depth, to values, to items and to bytes") {
    const auto with = [](const std::string& value) {
        return changed(goodPassageFile(), R"("v": 1)", R"("v": 1, "x": )" + value);
    };
    CHECK(readPassages(with(repeated("[", 15) + "0" + repeated("]", 15)), ""));
    CHECK(faultOf(with(repeated("[", 16) + "0" + repeated("]", 16))).number == FaultNumber::notAPassageFile);
    CHECK(faultOf(with(repeated("[", 4'000'000))).number == FaultNumber::notAPassageFile);
    CHECK(readPassages(with("[" + repeated("0,", 900'000) + "0]"), ""));
    const Fault many = faultOf(with("[" + repeated("0,", 1'000'000) + "0]"));
    CHECK(many == Fault{FaultNumber::passageFileTooLarge, {"x.piolo.json"}, {"1000000 values"}});
    const std::string large = goodPassageFile() + std::string(largestPassageFile, ' ');
    CHECK(faultOf(large) == Fault{FaultNumber::passageFileTooLarge, {"x.piolo.json"}, {"16 MiB"}});
    const std::string one = R"({"id":"00000000000000050000000000000001","name":""},)";
    const std::string pieces =
        changed(goodPassageFile(), R"("pieces": [)", R"("pieces": [)" + repeated(one, 10'000));
    CHECK(faultOf(pieces) == Fault{FaultNumber::passageFileTooLarge, {"x.piolo.json"}, {"10000 pieces"}});
}

TEST_CASE("the longest names that a file may hold fit a line of the journal") {
    const std::string escaped(longestName, '\x01'); // six bytes each in JSON
    Fact fact;
    fact.id = {1, 2};
    fact.device = std::string(32, 'a');
    fact.body = PieceFact{{3, 4}, escaped, escaped, std::optional<std::optional<Date>>(std::nullopt)};
    CHECK(toLine(fact).size() <= longestLine);
}

TEST_CASE(
    "a file is written completely; what could not be read back is not written, and the old file stays") {
    const ScratchFolder folder;
    const std::string path = folder / "set.piolo.json";
    const PassageSet good = *readPassages(goodPassageFile(), "");
    REQUIRE(writePassageFile(path, good));
    CHECK(contentOf(path) == goodPassageFile());
    CHECK(*readPassageFile(path) == good);
    PassageSet tooLong = good;
    tooLong.passages[1].title.name = std::string(longestName + 1, 'x');
    const Done refused = writePassageFile(path, tooLong);
    REQUIRE_FALSE(refused);
    CHECK(refused.fault() == Fault{FaultNumber::passageFileTooLarge, {path, 8}, {"4096 letters in a name"}});
    CHECK(contentOf(path) == goodPassageFile());
    CHECK(folder.names() == std::vector<std::string>{"set.piolo.json"});
}

TEST_CASE("a missing file, a folder or an endless file is one fault") {
    const ScratchFolder folder;
    CHECK(readPassageFile(folder / "none.piolo.json").fault().number == FaultNumber::cannotRead);
    CHECK(readPassageFile(folder.path()).fault().number == FaultNumber::cannotRead);
    CHECK(readPassageFile("/dev/zero").fault().number == FaultNumber::passageFileTooLarge);
}

TEST_CASE("a passage file is recognised by the ending of its name") {
    CHECK(isPassageFile("set.piolo.json"));
    CHECK(isPassageFile("a/SET.PIOLO.JSON"));
    CHECK_FALSE(isPassageFile(".piolo.json"));
    CHECK_FALSE(isPassageFile("set.json"));
    CHECK_FALSE(isPassageFile("set.piolo.jsonl"));
}
