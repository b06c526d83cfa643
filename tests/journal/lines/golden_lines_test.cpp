// SPDX-License-Identifier: GPL-3.0-or-later
// Lines and passage files as they have always been written: the bytes of tests/journal/golden.
#include "../../files/scratch_folder.h"
#include "core/passage/passage_set.h"
#include "full_lines.h"
#include "journal/lines/fact_line.h"
#include "journal/passage_file/passage_file.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::test;

namespace {

const std::string goldenFolder = PIOLO_SOURCE_DIR "/tests/journal/golden/";

std::string linesOf(const std::vector<Fact>& facts) {
    std::string lines;
    for (const Fact& fact : facts) lines += journal::toLine(fact) + '\n';
    return lines;
}

/// One piece and one passage with all optional values, and one of each without any.
PassageSet goldenSet() {
    PassageSet set;
    for (const Fact& fact : fullFacts()) {
        if (const auto* given = std::get_if<PieceFact>(&fact.body))
            set.pieces.push_back({{0, 5},
                                  *given->name,
                                  *given->instrument,
                                  *given->due,
                                  *given->composer,
                                  *given->transposition,
                                  *given->bars,
                                  *given->music,
                                  *given->notes});
        if (const auto* given = std::get_if<PassageFact>(&fact.body))
            set.passages.push_back({given->passage, *given->title, *given->music, *given->tempi,
                                    *given->click, *given->manner, *given->notes, given->scale});
    }
    set.pieces.push_back({{0, 7}, "Song", "", {}});
    set.passages.push_back({{0, 8}, Title{"Coda", {}, {}}, Music{}, Tempi{}});
    return set;
}

} // namespace

TEST_CASE("a line of every kind with every key has the bytes that it has always had, and reads back") {
    const std::string lines = contentOf(goldenFolder + "full.jsonl");
    CHECK(linesOf(fullFacts()) == lines);
    REQUIRE(fullFacts().size() == std::variant_size_v<FactBody>);
    std::size_t at = 0;
    for (const Fact& fact : fullFacts()) {
        const std::size_t end = lines.find('\n', at);
        const auto read = journal::fromLine(std::string_view(lines).substr(at, end - at), {});
        at = end + 1;
        REQUIRE(read.ok());
        CHECK(*read == fact);
    }
}

TEST_CASE("a line of every kind without the keys that may be missing has the bytes that it has always had") {
    CHECK(linesOf(sparseFacts()) == contentOf(goldenFolder + "sparse.jsonl"));
}

TEST_CASE("a passage file has the bytes that it has always had, and reads back") {
    const std::string text = contentOf(goldenFolder + "passages.piolo.json");
    CHECK(journal::passageFileText(goldenSet()) == text);
    const auto read = journal::readPassages(text, {});
    REQUIRE(read.ok());
    CHECK(*read == goldenSet());
}
