// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/wav.h"

#include "scratch_folder.h"

#include <algorithm>
#include <array>
#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::files;
using piolo::test::contentOf;
using piolo::test::put;
using piolo::test::ScratchFolder;

namespace {

void write(const std::string& path, std::int32_t rate, const std::vector<float>& samples) {
    auto writer = WavWriter::create(path, rate, samples.size());
    REQUIRE(writer.ok());
    REQUIRE(writer.value().write(samples).ok());
    REQUIRE(writer.value().commit().ok());
}

std::string little(std::uint32_t value, int count) {
    std::string text;
    for (int i = 0; i < count; ++i) text += static_cast<char>(value >> (8 * i));
    return text;
}

std::string chunk(const std::string& name, const std::string& content) {
    return name + little(static_cast<std::uint32_t>(content.size()), 4) + content +
           std::string(content.size() % 2, '\0');
}

std::string format(std::uint32_t tag, std::uint32_t channels, std::uint32_t bits) {
    return little(tag, 2) + little(channels, 2) + little(8000, 4) + little(8000 * 4, 4) + little(4, 2) +
           little(bits, 2);
}

std::string riff(const std::string& chunks) { return chunk("RIFF", "WAVE" + chunks); }

/// Writes the bytes to a file, reads it as WAV and returns the number and first argument of the fault.
std::string refusal(const std::string& content) {
    const ScratchFolder folder;
    put(folder / "x.wav", content);
    const auto wav = readWav(folder / "x.wav");
    if (wav.ok()) return "read";
    CHECK(wav.fault().number == FaultNumber::badWav);
    CHECK(wav.fault().location == FaultLocation{folder / "x.wav", 0});
    return wav.fault().arguments.at(0);
}

} // namespace

TEST_CASE("the header is the 58 bytes that a general sound program writes for float32 mono") {
    // Source: the layout that SoX 14.4.2 writes for one second of 48 kHz mono float32 (`sox -n -r 48000 -c 1
    // -e float -b 32 x.wav trim 0 1`), copied byte by byte; tag 3 and the fact chunk as the RIFF/WAVE format
    // requires for formats other than PCM.
    constexpr std::array<std::uint8_t, 58> expected{
        'R',  'I',  'F',  'F',  0x32, 0xEE, 0x02, 0x00, // 192050
        'W',  'A',  'V',  'E',  'f',  'm',  't',  ' ',
        0x12, 0x00, 0x00, 0x00, // 18
        0x03, 0x00, 0x01, 0x00, 0x80, 0xBB, 0x00, 0x00,
        0x00, 0xEE, 0x02, 0x00,             // 48000, 192000 bytes per second
        0x04, 0x00, 0x20, 0x00, 0x00, 0x00, // 4 bytes per frame, 32 bits
        'f',  'a',  'c',  't',  0x04, 0x00, 0x00, 0x00,
        0x80, 0xBB, 0x00, 0x00,                          // 48000 frames
        'd',  'a',  't',  'a',  0x00, 0xEE, 0x02, 0x00}; // 192000
    const ScratchFolder folder;
    write(folder / "x.wav", 48'000, std::vector<float>(48'000, 0.0F));
    const std::string content = contentOf(folder / "x.wav");
    REQUIRE(content.size() == 58 + 192'000);
    for (std::size_t i = 0; i < expected.size(); ++i) {
        CAPTURE(i);
        CHECK(static_cast<std::uint8_t>(content[i]) == expected[i]);
    }
}

TEST_CASE("samples begin at byte 58 as IEEE 754, lowest byte first") {
    const ScratchFolder folder;
    write(folder / "x.wav", 8000, {1.0F, -0.5F});
    // Source: IEEE 754 binary32: 1.0 is 3F800000, -0.5 is BF000000.
    CHECK(contentOf(folder / "x.wav").substr(58) == std::string("\x00\x00\x80\x3F\x00\x00\x00\xBF", 8));
}

TEST_CASE("samples written in any pieces are read back bit for bit") {
    const ScratchFolder folder;
    std::vector<float> samples;
    for (int i = 0; i < 1000; ++i) samples.push_back(static_cast<float>(i) / 997.0F - 0.5F);
    auto writer = WavWriter::create(folder / "x.wav", 44'100, samples.size());
    REQUIRE(writer.ok());
    const std::span<const float> all(samples);
    for (std::size_t at = 0; at < all.size(); at += 7)
        REQUIRE(writer.value().write(all.subspan(at, std::min<std::size_t>(7, all.size() - at))).ok());
    REQUIRE(writer.value().commit().ok());
    const auto wav = readWav(folder / "x.wav");
    REQUIRE(wav.ok());
    CHECK(wav->rate == 44'100);
    CHECK(wav->samples == samples);
}

TEST_CASE("an empty sound is only a header") {
    const ScratchFolder folder;
    write(folder / "x.wav", 48'000, {});
    CHECK(contentOf(folder / "x.wav").size() == 58);
    CHECK(readWav(folder / "x.wav")->samples.empty());
}

TEST_CASE("more than 4 GiB is refused before anything is written") {
    const ScratchFolder folder;
    // The sizes in the header have 32 bits: 58 - 8 bytes plus 4 per frame must not exceed 4294967295.
    CHECK(mostWavFrames() == (4'294'967'295ULL - 50) / 4);
    const auto writer = WavWriter::create(folder / "x.wav", 48'000, mostWavFrames() + 1);
    REQUIRE_FALSE(writer.ok());
    CHECK(writer.fault().number == FaultNumber::tooLarge);
    CHECK(folder.names().empty());
    CHECK(WavWriter::create(folder / "x.wav", 48'000, mostWavFrames()).ok());
}

TEST_CASE("a sound shorter than announced is not put in place") {
    const ScratchFolder folder;
    {
        auto writer = WavWriter::create(folder / "x.wav", 48'000, 3);
        REQUIRE(writer.value().write(std::vector<float>{1, 2}).ok());
        CHECK_FALSE(writer.value().commit().ok());
    }
    CHECK(folder.names().empty());
}

TEST_CASE("a full disk is reported as such") {
    auto writer = WavWriter::create("/dev/full", 48'000, 1);
    REQUIRE_FALSE(writer.ok());
    CHECK(writer.fault().number == FaultNumber::diskFull);
}

TEST_CASE("other chunks, odd ones too, and the extensible form of float32 are read") {
    const ScratchFolder folder;
    const std::string data = chunk("data", little(0x3F80'0000, 4));
    put(folder / "x.wav", riff(chunk("LIST", "odd") + chunk("fmt ", format(3, 1, 32)) + data));
    CHECK(readWav(folder / "x.wav")->samples == std::vector<float>{1.0F});
    const std::string extension =
        little(22, 2) + little(32, 2) + little(4, 4) + little(3, 2) + std::string(14, '\0');
    put(folder / "y.wav", riff(chunk("fmt ", format(0xFFFE, 1, 32) + extension) + data));
    CHECK(readWav(folder / "y.wav")->rate == 8000);
}

TEST_CASE("anything but float32 mono is reported") {
    const std::string data = chunk("data", little(0, 4));
    CHECK(refusal("") == "not RIFF/WAVE");
    CHECK(refusal("RIFFxxxxWAV") == "not RIFF/WAVE");
    CHECK(refusal(riff(data)) == "fmt");
    CHECK(refusal(riff(chunk("fmt ", "short"))) == "fmt");
    CHECK(refusal(riff(chunk("fmt ", format(1, 1, 32)) + data)) == "not float32");
    CHECK(refusal(riff(chunk("fmt ", format(3, 1, 64)) + data)) == "not float32");
    CHECK(refusal(riff(chunk("fmt ", format(3, 2, 32)) + data)) == "not mono");
    CHECK(refusal(riff(chunk("fmt ", format(3, 1, 32)))) == "data");
    CHECK(refusal(riff(chunk("fmt ", format(3, 1, 32)) + chunk("data", "abcde"))) == "data");
}

TEST_CASE("a file cut off anywhere is either reported or read, and nothing worse") {
    const ScratchFolder folder;
    write(folder / "whole.wav", 8000, {0.25F, 0.5F});
    const std::string whole = contentOf(folder / "whole.wav");
    for (std::size_t length = 0; length < whole.size(); ++length) {
        CAPTURE(length);
        CHECK(refusal(whole.substr(0, length)) != "read");
    }
}

TEST_CASE("a missing file is reported with the system's message") {
    const auto wav = readWav("/nowhere/x.wav");
    REQUIRE_FALSE(wav.ok());
    CHECK(wav.fault() ==
          Fault{FaultNumber::cannotRead, {"/nowhere/x.wav", 0}, {"No such file or directory"}});
}
