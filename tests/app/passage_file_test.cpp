// SPDX-License-Identifier: GPL-3.0-or-later
// Passages go from one player's folder to another's with `piolo export` and `piolo import`.
#include "command.h"
#include "practice.h"

#include "journal/folder/folder_lock.h"
#include "journal/settings/machine_settings.h"

#include <doctest/doctest.h>
#include <filesystem>

using namespace piolo;
using namespace piolo::test;

namespace {

const Id suite{5, 1};
const Id letterC{1, 1};
const std::string idC = "00000000000000010000000000000001";

// A teacher's folder: a piece with one passage, a separate exercise, and some runs.
std::string teacher(const Scratch& scratch) {
    Fact letter = defined(2, letterC, "Letter C");
    std::get<PassageFact>(letter.body).title->piece = suite;
    const Fact piece = fact(
        1, PieceFact{suite, "Ferrywake Suite", "Clarinet in B♭", std::optional<std::optional<Date>>({})});
    scratch.put("teacher/journal/a-2026.jsonl",
                lines({piece, letter, defined(3, {1, 2}, "Trio"), run(4, letterC, 60, Mark::clean)}));
    return scratch.path("teacher");
}

// Folders for the machine's settings, so that nobody's own settings are touched.
Around home(const Scratch& scratch) {
    Around around;
    around.environment = {{"XDG_CONFIG_HOME", scratch.path("config")},
                          {"XDG_STATE_HOME", scratch.path("state")},
                          {"DISPLAY", ""},
                          {"WAYLAND_DISPLAY", ""}};
    return around;
}

Ended runThere(const Scratch& scratch, const Args& words) { return runPiolo(words, home(scratch)); }

std::string exported(const Scratch& scratch, const std::string& folder, const std::string& name,
                     const Args& passages = {}) {
    Args words{"export", "--folder", folder, "--out", scratch.path(name)};
    words.insert(words.end(), passages.begin(), passages.end());
    const Ended end = runThere(scratch, words);
    CHECK(end.err == "");
    CHECK(end.out == "");
    REQUIRE(end.code == 0);
    return scratch.path(name);
}

Ended import(const Scratch& scratch, const std::string& file, const Args& more = {}) {
    Args words{"import", file, "--folder", scratch.path("student")};
    words.insert(words.end(), more.begin(), more.end());
    return runThere(scratch, words);
}

std::string changed(const std::string& path, const std::string& from, const std::string& to) {
    std::string text = bytesOf(path);
    const auto at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

// The content of the folder's journal.
std::string journalOf(const std::string& folder) {
    std::string all;
    for (const auto& file : std::filesystem::directory_iterator(folder + "/journal"))
        all += bytesOf(file.path().string());
    return all;
}

} // namespace

TEST_CASE("export, import into a new folder, export: the same bytes") {
    const Scratch scratch;
    const std::string file = exported(scratch, teacher(scratch), "a.piolo.json");
    const Ended end = import(scratch, file);
    CHECK(end.err == "");
    CHECK(end.out ==
          "added: piece \"Ferrywake Suite\"\nadded: passage \"Letter C\"\nadded: passage \"Trio\"\n"
          "3 added, 0 the same, 0 left alone\n");
    REQUIRE(end.code == 0);
    CHECK(bytesOf(exported(scratch, scratch.path("student"), "b.piolo.json")) == bytesOf(file));
    CHECK(runThere(scratch, {"check", scratch.path("student"), file}).out == "");
}

TEST_CASE("the sample goes through a folder byte for byte") {
    const Scratch scratch;
    const std::string sample = PIOLO_SOURCE_DIR "/samples/sectional.piolo.json";
    REQUIRE(import(scratch, sample).code == 0);
    CHECK(bytesOf(exported(scratch, scratch.path("student"), "b.piolo.json")) == bytesOf(sample));
}

TEST_CASE("the same file twice changes no byte, --replace or not") {
    const Scratch scratch;
    const std::string file = exported(scratch, teacher(scratch), "a.piolo.json");
    REQUIRE(import(scratch, file).code == 0);
    const std::string before = journalOf(scratch.path("student"));
    CHECK(import(scratch, file).out == "0 added, 3 the same, 0 left alone\n");
    CHECK(import(scratch, file, {"--replace"}).out == "0 added, 3 the same, 0 replaced\n");
    CHECK(journalOf(scratch.path("student")) == before);
}

TEST_CASE("what differs is listed and left alone unless --replace is given") {
    const Scratch scratch;
    const std::string file = exported(scratch, teacher(scratch), "a.piolo.json");
    REQUIRE(import(scratch, file).code == 0);
    const std::string before = journalOf(scratch.path("student"));
    const std::string newer =
        scratch.put("b.piolo.json", changed(file, R"("target":64000)", R"("target":72500)"));
    const Ended left = import(scratch, newer);
    CHECK(left.code == 0);
    CHECK(left.out == "left alone: passage \"Letter C\": tempi.target 64 -> 72.5\n"
                      "0 added, 2 the same, 1 left alone; --replace takes them from the file\n");
    CHECK(journalOf(scratch.path("student")) == before);
    CHECK(import(scratch, newer, {"--replace"}).out ==
          "replaced: passage \"Letter C\": tempi.target 64 -> 72.5\n0 added, 2 the same, 1 replaced\n");
    CHECK(bytesOf(exported(scratch, scratch.path("student"), "c.piolo.json")) == bytesOf(newer));
    CHECK(
        import(scratch, file).out.starts_with("left alone: passage \"Letter C\": tempi.target 72.5 -> 64\n"));
}

TEST_CASE("passages named by title or id come with only their own pieces") {
    const Scratch scratch;
    const std::string folder = teacher(scratch);
    const std::string trio = bytesOf(exported(scratch, folder, "a.piolo.json", {"Trio"}));
    CHECK(trio.find("Trio") != std::string::npos);
    CHECK(trio.find("Letter C") == std::string::npos);
    CHECK(trio.find("Ferrywake") == std::string::npos);
    const std::string both = exported(scratch, folder, "b.piolo.json", {"Trio", idC, "Letter C"});
    CHECK(bytesOf(both) == bytesOf(exported(scratch, folder, "c.piolo.json")));
    const Ended none =
        runThere(scratch, {"export", "Letter D", "--folder", folder, "--out", scratch.path("d.piolo.json")});
    CHECK(none.code == 2);
    CHECK(none.err ==
          "piolo: E117: PASSAGE: no passage has the id or title \"Letter D\"; check the spelling and the "
          "folder\n");
    CHECK_FALSE(std::filesystem::exists(scratch.path("d.piolo.json")));
}

TEST_CASE("import and check report a fault in the file with its line, and no folder is created") {
    const Scratch scratch;
    const std::string file = exported(scratch, teacher(scratch), "a.piolo.json");
    const std::string bad = scratch.put("b.piolo.json", changed(file, R"("drop":4)", R"("drop":0)"));
    const std::string reported =
        "E223: " + bad +
        ":7: the key \"tempi.drop\" has an impossible value: 0; nothing was imported, "
        "so fix the file by hand or have it sent again\n";
    const Ended end = import(scratch, bad);
    CHECK(end.code == 1);
    CHECK(end.err == "piolo: " + reported);
    CHECK(end.out == "");
    const Ended checked = runThere(scratch, {"check", bad});
    CHECK(checked.code == 1);
    CHECK(checked.out == reported);
    const std::string missing = scratch.path("none.piolo.json");
    CHECK(import(scratch, missing).err ==
          "piolo: E301: " + missing +
              ": cannot be read (No such file or directory); check the name and its permissions\n");
    CHECK_FALSE(std::filesystem::exists(scratch.path("student")));
}

TEST_CASE("a folder that a window has open is reported, and nothing is written") {
    const Scratch scratch;
    const std::string file = exported(scratch, teacher(scratch), "a.piolo.json");
    REQUIRE(import(scratch, file).code == 0);
    const std::string before = journalOf(scratch.path("student"));
    Fault damaged;
    const auto settings =
        journal::loadMachineSettings(scratch.path("config/piolo"), *journal::systemRandomness(), &damaged);
    REQUIRE(settings);
    const auto lock =
        journal::FolderLock::take(scratch.path("student"), settings->device, scratch.path("state/piolo"));
    REQUIRE(lock);
    const std::string newer = scratch.put("b.piolo.json", changed(file, "Trio", "Trio II"));
    const Ended end = import(scratch, newer, {"--replace"});
    CHECK(end.code == 1);
    CHECK(end.out == "");
    CHECK(end.err == "piolo: E321: " + scratch.path("student") +
                         ": a window has this folder open; close it and try again\n");
    CHECK(journalOf(scratch.path("student")) == before);
}

TEST_CASE("a name with control characters cannot control the terminal or break its line") {
    const Scratch scratch;
    const std::string file = exported(scratch, teacher(scratch), "a.piolo.json");
    const std::string odd = scratch.put("b.piolo.json", changed(file, "Trio", "\\u001b[2J\\nTrio"));
    const Ended end = import(scratch, odd);
    CHECK(end.code == 0);
    CHECK(end.out.find("added: passage \"[2J\uFFFDTrio\"\n") != std::string::npos);
}

TEST_CASE("an empty folder and a passage without its piece are reported, and nothing is written") {
    const Scratch scratch;
    const std::string out = scratch.path("a.piolo.json");
    scratch.put("empty/notes.txt", "");
    const Ended empty = runThere(scratch, {"export", "--folder", scratch.path("empty"), "--out", out});
    CHECK(empty.code == 1);
    CHECK(empty.err == "piolo: E322: " + scratch.path("empty") +
                           ": the folder has no passages and no pieces; give the path of the practice folder "
                           "that has them\n");
    Fact letter = defined(2, letterC, "Letter C");
    std::get<PassageFact>(letter.body).title->piece = suite;
    scratch.put("half/journal/a.jsonl", lines({letter}));
    const Ended half = runThere(scratch, {"export", "--folder", scratch.path("half"), "--out", out});
    CHECK(half.code == 1);
    CHECK(half.err.starts_with("piolo: E212: " + scratch.path("half") + ": the id " + suite.text()));
    CHECK_FALSE(std::filesystem::exists(out));
}
