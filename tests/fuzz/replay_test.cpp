// SPDX-License-Identifier: GPL-3.0-or-later
// Replays every find and every seed.
#include "target.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

namespace fs = std::filesystem;
using namespace piolo::fuzz;

namespace {

std::string bytesOf(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::vector<std::string> kept(std::string_view kind, std::string_view target) {
    std::vector<std::string> all;
    const auto folder = fs::path(PIOLO_FUZZ_DIR) / kind / target;
    if (!fs::exists(folder)) return all;
    for (const auto& entry : fs::directory_iterator(folder)) all.push_back(bytesOf(entry.path()));
    return all;
}

/// Changes, inserts or removes a byte, or cuts off the rest.
void spoil(std::string& bytes, std::mt19937_64& random) {
    const auto at = bytes.empty() ? 0 : random() % bytes.size();
    const auto byte = static_cast<char>(random());
    switch (random() % 4) {
    case 0:
        bytes.insert(at, 1, byte);
        break;
    case 1:
        bytes.erase(at, 1 + random() % 4);
        break;
    case 2:
        bytes.resize(at);
        break;
    default:
        if (!bytes.empty()) bytes[at] = byte;
    }
}

} // namespace

TEST_CASE("earlier finds stay fixed, and every target has seeds") {
    REQUIRE(std::freopen("/dev/null", "r", stdin) != nullptr);
    for (const auto& target : targets()) {
        CAPTURE(target.name);
        const auto seeds = kept("seeds", target.name);
        CHECK(!seeds.empty());
        for (const auto& bytes : seeds) CHECK_NOTHROW(target.run(bytes));
        for (const auto& bytes : kept("finds", target.name)) CHECK_NOTHROW(target.run(bytes));
    }
}

TEST_CASE("seeds with a few damaged bytes break no law") {
    const char* given = std::getenv("PIOLO_SEED");
    const auto seed = given == nullptr ? 1 : std::stoull(given);
    MESSAGE("seed ", seed);
    std::mt19937_64 random(seed);
    REQUIRE(std::freopen("/dev/null", "r", stdin) != nullptr);
    for (const auto& target : targets()) {
        CAPTURE(target.name);
        for (const auto& whole : kept("seeds", target.name))
            for (int round = 0; round < 200; ++round) {
                auto bytes = whole;
                for (auto times = 1 + random() % 3; times > 0; --times) spoil(bytes, random);
                CAPTURE(bytes);
                CHECK_NOTHROW(target.run(bytes));
            }
    }
}
