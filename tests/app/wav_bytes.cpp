// SPDX-License-Identifier: GPL-3.0-or-later
#include "wav_bytes.h"

#include "command.h"

#include <cstring>
#include <doctest/doctest.h>

namespace piolo::test {
namespace {

std::uint32_t little(const std::string& bytes, std::size_t at, int width) {
    std::uint32_t value = 0;
    for (int i = width - 1; i >= 0; --i)
        value = value << 8U | static_cast<unsigned char>(bytes.at(at + static_cast<std::size_t>(i)));
    return value;
}

} // namespace

std::vector<Onset> WavSound::onsets() const {
    std::vector<Onset> found;
    for (std::size_t i = 0; i < samples.size(); ++i)
        if (samples[i] != 0.0F) found.push_back({i, samples[i]});
    return found;
}

WavSound readSound(const std::string& path) {
    const std::string bytes = bytesOf(path);
    REQUIRE(bytes.size() >= 58);
    CHECK(bytes.substr(0, 4) == "RIFF");
    CHECK(little(bytes, 4, 4) == bytes.size() - 8);
    CHECK(bytes.substr(8, 8) == "WAVEfmt ");
    CHECK(little(bytes, 16, 4) == 18);
    CHECK(little(bytes, 20, 2) == 3); // IEEE float
    CHECK(little(bytes, 22, 2) == 1);
    const std::uint32_t rate = little(bytes, 24, 4);
    CHECK(little(bytes, 28, 4) == rate * 4);
    CHECK(little(bytes, 32, 2) == 4);
    CHECK(little(bytes, 34, 2) == 32);
    CHECK(little(bytes, 36, 2) == 0);
    CHECK(bytes.substr(38, 4) == "fact");
    CHECK(little(bytes, 42, 4) == 4);
    CHECK(little(bytes, 46, 4) == (bytes.size() - 58) / 4);
    CHECK(bytes.substr(50, 4) == "data");
    CHECK(little(bytes, 54, 4) == bytes.size() - 58);
    WavSound sound{rate, std::vector<float>((bytes.size() - 58) / 4)};
    std::memcpy(sound.samples.data(), bytes.data() + 58, sound.samples.size() * 4);
    return sound;
}

std::uint64_t nearestSample(std::uint64_t k, std::uint64_t rate, std::uint64_t tempoThousandths,
                            std::uint64_t n) {
    const auto over = static_cast<unsigned __int128>(k) * 60'000U * rate;
    const auto under = static_cast<unsigned __int128>(tempoThousandths) * n;
    return static_cast<std::uint64_t>((2 * over + under) / (2 * under));
}

} // namespace piolo::test
