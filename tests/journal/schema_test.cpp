// SPDX-License-Identifier: GPL-3.0-or-later
// docs/journal.schema.json against the lines, by a validator that knows nothing of this program: Python's
// jsonschema.
#include "../files/scratch_folder.h"
#include "journal/fact_line.h"
#include "random_facts.h"

#include <cstdlib>
#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::contentOf;
using piolo::test::put;
using piolo::test::RandomFacts;
using piolo::test::ScratchFolder;
using piolo::test::seedOfTest;

namespace {

bool hasValidator() {
    return std::system("python3 -c 'import jsonschema' 2>/dev/null") == 0;
} // NOLINT(cert-env33-c)

/// The numbers of the lines that the schema refuses, one a line.
std::string refused(const std::string& lines) {
    const ScratchFolder folder;
    put(folder / "lines", lines);
    const std::string source = PIOLO_SOURCE_DIR;
    const std::string command = "python3 '" + source + "/tests/journal/invalid_lines.py' '" + source +
                                "/docs/journal.schema.json' '" + (folder / "lines") + "' > '" +
                                (folder / "out") + "'";
    CHECK(std::system(command.c_str()) == 0); // NOLINT(cert-env33-c)
    return contentOf(folder / "out");
}

std::string changed(std::string line, const std::string& from, const std::string& to) {
    const auto at = line.find(from);
    REQUIRE(at != std::string::npos);
    return line.replace(at, from.size(), to);
}

} // namespace

TEST_CASE("the schema takes every line that is written") {
    if (!hasValidator()) {
        MESSAGE("not run: python3-jsonschema is not installed");
        return;
    }
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    std::string lines;
    for (std::size_t i = 0; i < 450; ++i) lines += toLine(random.fact(i % 9)) + "\n";
    CHECK(refused(lines).empty());
}

TEST_CASE("the schema refuses what the reader refuses") {
    if (!hasValidator()) {
        MESSAGE("not run: python3-jsonschema is not installed");
        return;
    }
    const Fact fact{{0, 9}, std::string(32, 'a'),
                    1,      1,
                    {},     RunFact{{0, 1}, Tempo::bpm(60), Mark::clean, Reason::none, false, 0, {}}};
    const std::string good = toLine(fact);
    const std::vector<std::string> lines{
        good,
        changed(good, "60000", "9999"),
        changed(good, "60000", "60000.5"),
        changed(good, R"("mark":"clean")", R"("mark":"good")"),
        changed(good, R"("mark":"clean",)", ""),
        changed(good, R"("kind":"run")", R"("kind":"lesson")"),
        changed(good, R"("v":1)", R"("v":2)"),
        changed(good, R"("ms":0)", R"("ms":0,"spots":[[1]])"),
        changed(good, R"("ms":0)", R"("ms":0,"later":true)"),
    };
    std::string text;
    std::string expected;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        text += lines[i] + "\n";
        if (!fromLine(lines[i], {})) expected += std::to_string(i + 1) + "\n";
    }
    CHECK(expected == "2\n3\n4\n5\n6\n7\n8\n");
    CHECK(refused(text) == expected);
}
