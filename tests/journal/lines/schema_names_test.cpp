// SPDX-License-Identifier: GPL-3.0-or-later
// Compares docs/journal.schema.json with the tables of names.
#include "core/history/run_kind.h"
#include "core/passage/stage.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <string>
#include <vector>

using namespace piolo;

namespace {

using Names = std::vector<std::string>;

/// The values that the schema allows for a field of a fact.
Names allowed(const char* fact, const char* field) {
    std::ifstream in(PIOLO_SOURCE_DIR "/docs/journal.schema.json");
    return nlohmann::json::parse(in).at("$defs").at(fact).at("properties").at(field).at("enum").get<Names>();
}

} // namespace

TEST_CASE("the schema has the stages and run kinds of the tables") {
    Names stages;
    for (const StageInfo& info : stageTable) stages.emplace_back(info.name);
    CHECK(allowed("stage", "stage") == stages);
    Names kinds;
    for (const RunKindInfo& info : runKindTable)
        if (!info.journal.empty()) kinds.emplace_back(info.journal);
    CHECK(allowed("run", "as") == kinds);
}
