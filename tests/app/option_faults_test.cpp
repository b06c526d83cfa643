// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"

#include "command/verbs/verb_list.h"

#include <doctest/doctest.h>

using namespace piolo::test;

namespace {

struct Wrong {
    Args words;
    std::string reported; ///< without "piolo: " and the line end
    int code = 2;
};

const std::string tempoWords =
    "is not a valid tempo; write 10 to 400 with at most three decimals, for example 72.5";
const std::string meterWords = "is not a valid meter; write 1 to 32 over 1, 2, 4, 8 or 16, for example 7/8";
const std::string beatWords = "is not a valid beat; write 1/2, 1/4, 3/8, 1/8 or 3/4";

// A valid call of the verb followed by `more`: the last of two equal options counts.
Args with(const Args& good, const Args& more) {
    Args words = good;
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

Args without(const Args& good, const std::string& option) {
    Args words;
    for (std::size_t i = 0; i < good.size(); ++i)
        if (good[i] == option)
            ++i;
        else
            words.push_back(good[i]);
    return words;
}

void check(const std::vector<Wrong>& wrongs, const Scratch& scratch) {
    for (const Wrong& wrong : wrongs) {
        const Ended end = runPiolo(wrong.words);
        CHECK(end.err == "piolo: " + wrong.reported + '\n');
        CHECK(end.out == "");
        CHECK(end.code == wrong.code);
        CHECK(scratch.names().empty());
    }
}

Args goodClick(const Scratch& scratch) {
    return {"click", "--tempo", "60", "--bars", "1", "--out", scratch.path("x.wav")};
}
Args goodTrack(const Scratch& scratch) {
    return {"track",  "--start", "60",    "--target",           "96", "--climb", "4", "--bars", "4",
            "--runs", "5",       "--out", scratch.path("x.wav")};
}
const Args goodLadder{"ladder", "--start", "72", "--target",     "96", "--drop",
                      "4",      "--climb", "2",  "--clean-runs", "5"};

} // namespace

TEST_CASE("an unknown argument is reported with the possible ones") {
    const Scratch scratch;
    check(
        {{{"klick"},
          "E101: klick: is not a verb; write " + piolo::command::verbNames() + ", or see piolo --help"},
         {{""}, "E101: is not a verb; write " + piolo::command::verbNames() + ", or see piolo --help"},
         {{"--wibble"}, "E102: --wibble: is not a valid option; see piolo --help"},
         {{"--folder"},
          "E104: --folder: needs a value; write one after it, for example --folder ~/spring-concert"},
         {{"--folder", "x", "click"}, "E119: click: is one word too many; leave it out, or see piolo --help"},
         {{"-h"}, "E119: -h: is one word too many; leave it out, or see piolo --help"},
         {{"--size", "12"},
          "E115: --size: \"12\" is not a valid choice here; write width x height, 64x64 to 8192x8192, for "
          "example "
          "960x360"}},
        scratch);
}

TEST_CASE("click refuses wrong options, one line each, and writes nothing") {
    const Scratch scratch;
    const Args good = goodClick(scratch);
    check(
        {{with(good, {"--wibble", "1"}), "E102: --wibble: is not a valid option; see piolo click --help"},
         {with(good, {"more"}), "E119: more: is one word too many; leave it out, or see piolo click --help"},
         {without(good, "--tempo"), "E103: --tempo: is missing; add it, for example --tempo 137"},
         {without(good, "--bars"), "E103: --bars: is missing; add it, for example --bars 8"},
         {without(good, "--out"), "E103: --out: is missing; add it, for example --out x.wav"},
         {with(good, {"--tempo"}),
          "E104: --tempo: needs a value; write one after it, for example --tempo 137"},
         {with(good, {"--tempo", "--bars"}),
          "E104: --tempo: needs a value; write one after it, for example --tempo 137"},
         {with(good, {"--out="}), "E104: --out: needs a value; write one after it, for example --out x.wav"},
         {with(good, {"--bars", "two"}),
          "E105: --bars: \"two\" is not a whole number; write digits only, for example --bars 8"},
         {with(good, {"--bars", "1.5"}),
          "E105: --bars: \"1.5\" is not a whole number; write digits only, for example --bars 8"},
         {with(good, {"--bars", "0"}), "E113: --bars: 0 is out of range; choose 1 to 1000000000000"},
         {with(good, {"--bars", "-3"}), "E113: --bars: -3 is out of range; choose 1 to 1000000000000"},
         {with(good, {"--count-in", "5"}), "E113: --count-in: 5 is out of range; choose 0 to 4"},
         {with(good, {"--rate", "7999"}), "E113: --rate: 7999 is out of range; choose 8000 to 192000"},
         {with(good, {"--rate", "192001"}), "E113: --rate: 192001 is out of range; choose 8000 to 192000"},
         {with(good, {"--rate", "48k"}),
          "E105: --rate: \"48k\" is not a whole number; write digits only, for example --rate 48000"},
         {with(good, {"--subdivision", "9"}),
          "E111: --subdivision: \"9\" is not a valid subdivision; write 1 to 8 pulses per beat"},
         {with(good, {"--subdivision", "0"}),
          "E111: --subdivision: \"0\" is not a valid subdivision; write 1 to 8 pulses per beat"},
         {with(good, {"--voice", "cow"}),
          "E112: --voice: \"cow\" is not a click voice; choose impulse, wood, metal, reed or dry"},
         {with(good, {"--out", scratch.path("x.mp3")}),
          "E116: --out: \"" + scratch.path("x.mp3") +
              "\" is not a kind of file that can be written here; let the name end in .wav"},
         {with(good, {"--out", ".wav"}),
          "E116: --out: \".wav\" is not a kind of file that can be written here; let the name end in .wav"}},
        scratch);
}

TEST_CASE("an invalid click pattern is refused at its option") {
    const Scratch scratch;
    const Args good = with(goodClick(scratch), {"--bars", "8"});
    const std::string accents =
        "\" does not give the accents of a bar of 4 beats; write strong, group, plain or "
        "silent for each beat, separated by commas";
    const std::string swing = "\" is not a valid swing; write long:short from 1:1 to 3:1, for example 2:1";
    const std::string pairs =
        "E122: --swing: the beat has no pairs of eighths or sixteenths to swing; divide "
        "it into an even number of them with --subdivision";
    const std::string breath =
        "\" does not give breath places in bars 1 to 8 of 4 beats; write BAR:BEAT:BEATS after "
        "the first beat, in order, for example 4:3:1,8:1:2";
    std::vector<Wrong> wrongs{
        {with(good, {"--click", "evens"}), "E115: --click: \"evens\" is not a valid choice here; write "
                                           "beats, downbeats, backbeats or offbeats"},
        {with(good, {"--click", "backbeats", "--meter", "3/4", "--beat", "3/4"}),
         "E124: --click: a bar of one beat has no beat 2; count it in shorter beats with --beat"},
        {with(good, {"--swing", "2:1"}), pairs},
        {with(good, {"--swing", "2:1", "--subdivision", "3"}), pairs},
        {with(good, {"--bars-on", "2"}), "E103: --bars-off: is missing; add it, for example --bars-off 1"},
        {with(good, {"--bars-off", "100"}), "E113: --bars-off: 100 is out of range; choose 0 to 99"},
        {with(good, {"--bars-on", "0", "--bars-off", "1"}),
         "E113: --bars-on: 0 is out of range; choose 1 to 99"},
        {with(good, {"--silent-bars", "101"}), "E113: --silent-bars: 101 is out of range; choose 0 to 100"},
        {with(good, {"--left-out", "-1"}), "E113: --left-out: -1 is out of range; choose 0 to 100"},
        {with(good, {"--seed", "1000000000"}),
         "E113: --seed: 1000000000 is out of range; choose 0 to 999999999"},
        {with(good, {"--breath-below", "9"}), "E106: --breath-below: \"9\" " + tempoWords}};
    for (const char* text : {"strong", "strong,plain,plain,loud", "strong,plain,plain,plain,plain", ",,,",
                             "strong,plain,plain,plain,"})
        wrongs.push_back(
            {with(good, {"--accents", text}), "E120: --accents: \"" + std::string(text) + accents});
    for (const char* text : {"2", "4:1", "1:2", "0:0", "100:50", "2:1:1", "two:one"})
        wrongs.push_back({with(good, {"--swing", text}), "E121: --swing: \"" + std::string(text) + swing});
    for (const char* text : {"3", "1:1:1", "0:1:1", "9:1:1", "2:5:1", "2:1:0", "2:1:9", "2:1:1,2:1:1",
                             "3:1:1,2:1:1", "2:1:1,", "2:1:1:1", "2:-1:1", "99999999999:1:1"})
        wrongs.push_back({with(good, {"--breath", text}), "E123: --breath: \"" + std::string(text) + breath});
    check(wrongs, scratch);
}

TEST_CASE("a tempo out of 10 to 400, with a fourth decimal or not a number is refused") {
    const Scratch scratch;
    std::vector<Wrong> wrongs;
    for (const char* tempo :
         {"9.999", "400.001", "60.0001", "60,5", "6e1", "-60", "sixty", "60.", "", " 60", "0x3c", "nan"})
        wrongs.push_back({with(goodClick(scratch), {"--tempo=" + std::string(tempo)}),
                          "E106: --tempo: \"" + std::string(tempo) + "\" " + tempoWords});
    check(wrongs, scratch);
}

TEST_CASE("a meter, beat or grouping that does not fit is refused at its option") {
    const Scratch scratch;
    const Args good = goodClick(scratch);
    const std::string groupWords =
        "; write groups that fill it and begin on beats, as 2+2+3 fills 7/8 in eighths";
    check({{with(good, {"--meter", "4"}), "E107: --meter: \"4\" " + meterWords},
           {with(good, {"--meter", "0/4"}), "E107: --meter: \"0/4\" " + meterWords},
           {with(good, {"--meter", "33/4"}), "E107: --meter: \"33/4\" " + meterWords},
           {with(good, {"--meter", "4/3"}), "E107: --meter: \"4/3\" " + meterWords},
           {with(good, {"--beat", "1/3"}), "E108: --beat: \"1/3\" " + beatWords},
           {with(good, {"--beat", "quarter"}), "E108: --beat: \"quarter\" " + beatWords},
           {with(good, {"--beat", "3/8"}), "E109: --beat: a bar of 4/4 does not divide into 3/8 beats; "
                                           "choose a shorter beat or another meter"},
           {with(good, {"--meter", "7/8", "--beat", "1/4"}),
            "E109: --beat: a bar of 7/8 does not divide into 1/4 beats; choose a shorter beat or another "
            "meter"},
           {with(good, {"--meter", "7/8", "--groups", "2+2+2"}),
            "E110: --groups: \"2+2+2\" does not group a bar of 7/8" + groupWords},
           {with(good, {"--meter", "7/8", "--groups", "7+"}),
            "E110: --groups: \"7+\" does not group a bar of 7/8" + groupWords}},
          scratch);
}

TEST_CASE("more than 4 GiB is refused before anything is written, with exit 1") {
    const Scratch scratch;
    const std::string words = "E304: " + scratch.path("x.wav") +
                              ": the sound would be larger than 4 GiB; ask for fewer bars or a lower rate";
    // 58 bytes of header and 4 per sample: at 60 BPM and 192 kHz, a bar of 4/4 has 3072000 bytes, and 1398 of
    // them have 4294656058.
    check({{with(goodClick(scratch), {"--rate", "192000", "--bars", "1399"}), words, 1},
           {with(goodClick(scratch), {"--bars", "1000000000000", "--meter", "32/4", "--tempo", "10"}), words,
            1},
           {with(goodTrack(scratch), {"--bars", "1000000000000", "--runs", "10000"}), words, 1}},
          scratch);
    const std::string midi = scratch.path("x.mid");
    check(
        {{with(goodTrack(scratch), {"--runs", "10000", "--out", midi}),
          "E304: " + midi + ": the sound would be larger than 4 GiB; ask for fewer bars or a lower rate", 1}},
        scratch);
}

TEST_CASE("track refuses wrong options") {
    const Scratch scratch;
    const Args good = goodTrack(scratch);
    std::vector<Wrong> wrongs{
        {with(good, {"--start", "97"}),
         "E114: --start: 97 is above the target of 96; lower the one or raise the other"},
        {with(good, {"--climb", "0"}), "E113: --climb: 0 is out of range; choose 1 to 100"},
        {with(good, {"--climb", "1.5"}),
         "E105: --climb: \"1.5\" is not a whole number; write digits only, for example --climb 4"},
        {with(good, {"--runs", "0"}), "E113: --runs: 0 is out of range; choose 1 to 10000"},
        {with(good, {"--count-in", "-1"}), "E113: --count-in: -1 is out of range; choose 0 to 4"},
        {with(good, {"--out", scratch.path("x.midi")}),
         "E116: --out: \"" + scratch.path("x.midi") +
             "\" is not a kind of file that can be written here; let the name end in .wav or .mid"}};
    for (const auto& [option, example] : std::vector<std::pair<std::string, std::string>>{{"--start", "60"},
                                                                                          {"--target", "96"},
                                                                                          {"--climb", "4"},
                                                                                          {"--bars", "4"},
                                                                                          {"--runs", "5"},
                                                                                          {"--out", "x.wav"}})
        wrongs.push_back({without(good, option),
                          "E103: " + option + ": is missing; add it, for example " + option + ' ' + example});
    check(wrongs, scratch);
}

TEST_CASE("ladder refuses wrong options before it prints anything") {
    const Scratch scratch;
    const std::string order = "; lower the one or raise the other";
    std::vector<Wrong> wrongs{
        {with(goodLadder, {"--floor", "73"}), "E114: --floor: 73 is above the start of 72" + order},
        {with(goodLadder, {"--start", "96.001"}), "E114: --start: 96.001 is above the target of 96" + order},
        {with(goodLadder, {"--step", "bars"}),
         "E115: --step: \"bars\" is not a valid choice here; write bpm or notches"},
        {with(goodLadder, {"--floor", "9"}), "E106: --floor: \"9\" " + tempoWords}};
    for (const std::string option : {"--drop", "--climb", "--clean-runs"})
        for (const std::string value : {"0", "101", "-1"})
            wrongs.push_back({with(goodLadder, {option, value}),
                              "E113: " + option + ": " + value + " is out of range; choose 1 to 100"});
    for (const auto& [option, example] : std::vector<std::pair<std::string, std::string>>{
             {"--start", "72"}, {"--target", "96"}, {"--drop", "4"}, {"--climb", "2"}, {"--clean-runs", "5"}})
        wrongs.push_back({without(goodLadder, option),
                          "E103: " + option + ": is missing; add it, for example " + option + ' ' + example});
    check(wrongs, scratch);
}

TEST_CASE("curve and check refuse wrong use") {
    const Scratch scratch;
    const Args good{"curve", "Letter C", "--folder", scratch.path(), "--out", scratch.path("x.svg")};
    check({{{"check"}, "E103: FILE-OR-FOLDER: is missing; add it, for example ~/spring-concert"},
           {{"check", "--wibble"}, "E102: --wibble: is not a valid option; see piolo check --help"},
           {{"curve", "--folder", "x", "--out", "x.svg"},
            "E103: PASSAGE: is missing; add it, for example \"Letter C, bars 41 to 48\""},
           {without(good, "--folder"),
            "E103: --folder: is missing; add it, for example --folder ~/spring-concert"},
           {without(good, "--out"), "E103: --out: is missing; add it, for example --out curve.svg"},
           {with(good, {"--out", "x.gif"}), "E116: --out: \"x.gif\" is not a kind of file that can be "
                                            "written here; let the name end in .svg, .png, .pdf or .csv"},
           {with(good, {"--by", "weeks"}),
            "E115: --by: \"weeks\" is not a valid choice here; write runs or days"},
           {with(good, {"--size", "63x100"}), "E115: --size: \"63x100\" is not a valid choice here; write "
                                              "width x height, 64x64 to 8192x8192, for example 960x360"},
           {with(good, {"--size", "100x100x"}),
            "E115: --size: \"100x100x\" is not a valid choice here; write width x "
            "height, 64x64 to 8192x8192, for example 960x360"},
           {with(good, Args(20, "Letter D")),
            "E119: Letter D: is one word too many; leave it out, or see piolo curve --help"},
           {good,
            "E117: PASSAGE: no passage has the id or title \"Letter C\"; check the spelling and the folder"}},
          scratch);
}

TEST_CASE("export and import refuse wrong use before they touch a folder") {
    const Scratch scratch;
    const Args out{"export", "--folder", scratch.path("none"), "--out", scratch.path("x.piolo.json")};
    const Args in{"import", "x.piolo.json", "--folder", scratch.path("none")};
    check({{without(out, "--folder"),
            "E103: --folder: is missing; add it, for example --folder ~/spring-concert"},
           {without(out, "--out"), "E103: --out: is missing; add it, for example --out sectional.piolo.json"},
           {with(out, {"--out", "x.json"}), "E116: --out: \"x.json\" is not a kind of file that can be "
                                            "written here; let the name end in .piolo.json or .musicxml"},
           {with(out, {"--out", "x.musicxml"}),
            "E103: PASSAGE: is missing; add it, for example \"Letter C, bars 41 to 48\""},
           {with(out, {"--out", "x.musicxml", "Letter C", "Letter D"}),
            "E119: Letter D: is one word too many; leave it out, or see piolo export --help"},
           {with(out, {"--replace"}), "E102: --replace: is not a valid option; see piolo export --help"},
           {out,
            "E301: " + scratch.path("none") +
                ": cannot be read (No such file or directory); check the name and its permissions",
            1},
           {without(in, "--folder"),
            "E103: --folder: is missing; add it, for example --folder ~/spring-concert"},
           {{"import", "--folder", "x"}, "E103: FILE: is missing; add it, for example sectional.piolo.json"},
           {with(in, {"y.piolo.json"}),
            "E119: y.piolo.json: is one word too many; leave it out, or see piolo import --help"},
           {with(in, {"--replace=yes"}),
            "E119: --replace=yes: is one word too many; leave it out, or see piolo import --help"}},
          scratch);
}
