// SPDX-License-Identifier: GPL-3.0-or-later
// docs/passage.schema.json compared with passage files.
#include "../../files/scratch_folder.h"
#include "../validation.h"
#include "hostile_passage_files.h"
#include "journal/passage_file/passage_file.h"
#include "random_set.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::journal;
using namespace piolo::test;

namespace {

/// The document on one line: JSON strings cannot contain line ends.
std::string onOneLine(std::string document) {
    std::replace(document.begin(), document.end(), '\n', ' ');
    return document + '\n';
}

std::string refused(const std::string& documents) { return refusedLines("passage.schema.json", documents); }

} // namespace

TEST_CASE("every passage file that is written matches the schema, and so does the sample") {
    if (!hasValidator()) return;
    const unsigned seed = seedOfTest();
    CAPTURE(seed);
    RandomFacts random(seed);
    std::string documents = onOneLine(goodPassageFile());
    documents += onOneLine(contentOf(PIOLO_SOURCE_DIR "/samples/sectional.piolo.json"));
    for (int i = 0; i < 200; ++i) documents += onOneLine(passageFileText(randomSet(random)));
    CHECK(refused(documents).empty());
}

TEST_CASE("the schema refuses what the reader refuses, wherever a schema can say so") {
    if (!hasValidator()) return;
    std::string documents;
    std::string expected;
    int line = 0;
    for (const HostileFile& hostile : hostileFiles()) {
        documents += onOneLine(changed(goodPassageFile(), hostile.from, hostile.to));
        ++line;
        if (hostile.schemaSees) expected += std::to_string(line) + '\n';
    }
    CHECK(refused(documents) == expected);
}
