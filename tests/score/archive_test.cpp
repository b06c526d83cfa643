// SPDX-License-Identifier: GPL-3.0-or-later
#include "packed.h"
#include "score_text.h"

#include "score/read/limits.h"
#include "score/read/score_file.h"

#include <array>
#include <zip.h>

using namespace piolo;
using namespace piolo::test;

namespace {

const std::string container = "META-INF/container.xml";
const std::string good = scoreOf(barsOf({signature(1, "4", "4") + note(4)}));

std::string wellPacked() { return packed({{container, containerFor("score.xml")}, {"score.xml", good}}); }

/// The only fault of an archive.
Fault faultOf(const std::string& archive) {
    const auto reading = score::readScore(archive, "a.mxl");
    REQUIRE(reading.faults.size() == 1);
    return reading.faults.front();
}

/// This many equal bytes, deflated by libzip itself.
std::string squeezed(std::size_t bytes) {
    zip_source_t* into = zip_source_buffer_create(nullptr, 0, 0, nullptr);
    zip_source_keep(into);
    zip_t* archive = zip_open_from_source(into, ZIP_TRUNCATE, nullptr);
    const std::string names = containerFor("score.xml");
    const std::string blank(bytes, ' ');
    zip_file_add(archive, container.c_str(), zip_source_buffer(archive, names.data(), names.size(), 0), 0);
    zip_file_add(archive, "score.xml", zip_source_buffer(archive, blank.data(), blank.size(), 0), 0);
    REQUIRE(zip_close(archive) == 0);
    REQUIRE(zip_source_open(into) == 0);
    std::string made;
    std::array<char, 4096> block{};
    for (auto count = zip_source_read(into, block.data(), block.size()); count > 0;
         count = zip_source_read(into, block.data(), block.size()))
        made.append(block.data(), static_cast<std::size_t>(count));
    zip_source_close(into);
    zip_source_free(into);
    return made;
}

} // namespace

TEST_CASE("a compressed score is read like an uncompressed one") {
    const auto reading = score::readScore(wellPacked(), "a.mxl");
    CHECK(reading.faults.empty());
    CHECK(reading.score.parts.size() == 1);
}

TEST_CASE("an archive cut short anywhere is one fault") {
    const std::string whole = wellPacked();
    for (std::size_t size = 2; size < whole.size(); size += 7)
        CHECK(faultOf(whole.substr(0, size)).number == FaultNumber::brokenArchive);
}

TEST_CASE("an archive with a wrong checksum is refused") {
    std::string flipped = wellPacked();
    flipped[flipped.find("<measure") + 1] = 'n';
    CHECK(faultOf(flipped).number == FaultNumber::brokenArchive);
}

TEST_CASE("a path that leads out of the archive, or nowhere, is refused with its name") {
    for (const std::string path : {"../score.xml", "/etc/passwd", "a/../../score.xml", "a\\score.xml",
                                   "C:score.xml", "./score.xml", "", "other.xml"}) {
        const auto fault =
            faultOf(packed({{container, containerFor(path)}, {"score.xml", good}, {path + "x", good}}));
        CHECK(fault.number == FaultNumber::archivePath);
        CHECK(fault.arguments.at(0) == path);
    }
    CHECK(faultOf(packed({{"score.xml", good}})).arguments.at(0) == container);
}

TEST_CASE("what unpacks to more than a score may hold is refused, whatever size is claimed") {
    const std::string bomb = squeezed(score::largestScore + 1);
    CHECK(bomb.size() < 100'000);
    CHECK(faultOf(bomb).number == FaultNumber::scoreTooLarge);
    CHECK(faultOf(squeezed(score::largestScore)).number == FaultNumber::brokenXml);
    const auto big = packed({{container, std::string(score::largestContainer + 1, ' ')}});
    CHECK(faultOf(big).number == FaultNumber::scoreTooLarge);
    CHECK(faultOf("PK" + std::string(score::largestArchive, 'x')).number == FaultNumber::scoreTooLarge);
}

TEST_CASE("gigabytes that are only claimed use no memory") {
    const auto reading = score::readScore(
        packed({{container, containerFor("score.xml")}, {"score.xml", good, 0xFFFFFFF0}}), "a.mxl");
    CHECK(reading.faults.size() == 1);
}
