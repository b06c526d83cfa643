// SPDX-License-Identifier: GPL-3.0-or-later
// docs/journal.schema.json compared with the lines.
#include "../validation.h"
#include "bare_line.h"
#include "journal/lines/fact_line.h"
#include "random_facts.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::journal;
using piolo::test::bareLine;
using piolo::test::hasValidator;
using piolo::test::RandomFacts;
using piolo::test::refusedLines;
using piolo::test::seedOfTest;

namespace {

std::string changed(std::string line, const std::string& from, const std::string& to) {
    const auto at = line.find(from);
    REQUIRE(at != std::string::npos);
    return line.replace(at, from.size(), to);
}

} // namespace

TEST_CASE("every line that is written matches the schema") {
    if (!hasValidator()) return;
    const unsigned seed = seedOfTest();
    MESSAGE("PIOLO_SEED=" << seed);
    RandomFacts random(seed);
    std::string lines;
    for (std::size_t i = 0; i < 50 * kindCount; ++i) lines += toLine(random.fact(i % kindCount)) + "\n";
    CHECK(refusedLines("journal.schema.json", lines).empty());
}

TEST_CASE("the schema refuses what the reader refuses") {
    if (!hasValidator()) return;
    const Fact fact{{0, 9}, std::string(32, 'a'),
                    1,      1,
                    {},     RunFact{{0, 1}, Tempo::bpm(60), Mark::clean, Reason::none, RunKind::run, 0, {}}};
    const std::string good = bareLine(fact);
    const std::vector<std::string> lines{
        good,
        changed(good, "60000", "9999"),
        changed(good, "60000", "60000.5"),
        changed(good, R"("mark":"clean")", R"("mark":"good")"),
        changed(good, R"("mark":"clean",)", ""),
        changed(good, R"("kind":"run")", R"("kind":"lesson")"),
        changed(good, R"("v":1)", R"("v":2)"),
        changed(good, R"("ms":0)", R"("as":"silent","ms":0)"),
        changed(good, R"("ms":0)", R"("as":"try","ms":0)"),
        changed(good, R"("ms":0)", R"("try":true,"as":"silent","ms":0)"),
        changed(good, R"("ms":0)", R"("ms":0,"spots":[[1]])"),
        changed(good, R"("ms":0)", R"("ms":0,"later":true)"),
    };
    std::string text;
    std::string expected;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        text += lines[i] + "\n";
        if (!fromLine(lines[i], {})) expected += std::to_string(i + 1) + "\n";
    }
    CHECK(expected == "2\n3\n4\n5\n6\n7\n9\n10\n11\n");
    CHECK(refusedLines("journal.schema.json", text) == expected);
}
