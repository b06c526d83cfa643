// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"
#include "wav_bytes.h"

#include <doctest/doctest.h>

using namespace piolo::test;

namespace {

struct Click {
    std::string tempo;
    std::uint64_t thousandths = 0;
    std::uint64_t rate = 48'000;
    std::uint64_t beatsPerBar = 4;
    std::uint64_t n = 1;
    std::uint64_t bars = 1;
    Args more{};
};

WavSound render(const Click& click) {
    const Scratch scratch;
    const std::string path = scratch.path("click.wav");
    Args words{"click",
               "--tempo",
               click.tempo,
               "--rate",
               std::to_string(click.rate),
               "--bars",
               std::to_string(click.bars),
               "--subdivision",
               std::to_string(click.n),
               "--voice",
               "impulse",
               "--out",
               path};
    words.insert(words.end(), click.more.begin(), click.more.end());
    const Ended end = runPiolo(words);
    CHECK(end.err == "");
    CHECK(end.out == "");
    REQUIRE(end.code == 0);
    CHECK(scratch.names() == std::vector<std::string>{"click.wav"});
    return readSound(path);
}

float levelOf(const Click& click, std::uint64_t k) {
    if (k % click.n != 0) return 0.5F;
    return k / click.n % click.beatsPerBar == 0 ? 1.0F : 0.75F;
}

// Every onset is where its definition puts it, the file contains nothing else, and its length is that of its
// bars.
void checkExact(const Click& click) {
    CAPTURE(click.tempo);
    CAPTURE(click.rate);
    const WavSound sound = render(click);
    const std::uint64_t pulses = click.bars * click.beatsPerBar * click.n;
    std::vector<Onset> expected;
    for (std::uint64_t k = 0; k < pulses; ++k)
        expected.push_back({nearestSample(k, click.rate, click.thousandths, click.n), levelOf(click, k)});
    const std::vector<Onset> found = sound.onsets();
    CHECK(sound.rate == click.rate);
    CHECK(found.size() == expected.size());
    CHECK((found == expected));
    CHECK(sound.samples.size() == nearestSample(pulses, click.rate, click.thousandths, click.n));
}

} // namespace

TEST_CASE("septuplets at 137 are at the samples nearest to their exact positions at every usual rate") {
    for (const std::uint64_t rate : {44'100, 48'000, 96'000})
        checkExact({"137", 137'000, rate, 4, 7, 200, {}});
}

TEST_CASE("7/8 in eighths, 6/8 in dotted quarters and half a beat per minute are as exact") {
    for (const std::uint64_t rate : {44'100, 48'000, 96'000}) {
        checkExact({"190", 190'000, rate, 7, 2, 20, {"--meter", "7/8"}});
        checkExact({"72.5", 72'500, rate, 2, 3, 20, {"--meter", "6/8"}});
        checkExact({"72.5", 72'500, rate, 4, 5, 20, {}});
        checkExact({"99.999", 99'999, rate, 3, 4, 20, {"--meter", "3/4"}});
    }
}

TEST_CASE("ten minutes have not drifted") { checkExact({"137", 137'000, 8000, 4, 7, 343, {}}); }

// 48 kHz, 100 BPM: a beat is 28800 samples, a septuplet 4114.2857. By hand: k · 28800 / 7.
TEST_CASE("the first septuplets at 100 are where calculation by hand puts them") {
    const WavSound sound = render({"100", 100'000, 48'000, 4, 7, 1, {}});
    const std::vector<std::uint64_t> byHand{0, 4114, 8229, 12343, 16457, 20571, 24686, 28800};
    const std::vector<Onset> found = sound.onsets();
    REQUIRE(found.size() == 28);
    for (std::size_t i = 0; i < byHand.size(); ++i) CHECK(found[i].sample == byHand[i]);
    CHECK(sound.samples.size() == 115'200);
}

TEST_CASE("a count-in comes first and clicks only the beats") {
    const WavSound sound = render({"120", 120'000, 48'000, 4, 3, 1, {"--count-in", "2"}});
    const std::vector<Onset> found = sound.onsets();
    REQUIRE(found.size() == 8 + 12);
    for (std::size_t i = 0; i < 8; ++i) CHECK((found[i] == Onset{i * 24'000, i % 4 == 0 ? 1.0F : 0.75F}));
    for (std::size_t i = 0; i < 12; ++i) CHECK(found[8 + i].sample == 192'000 + i * 8000);
    CHECK(found[9].level == 0.5F);
    CHECK(sound.samples.size() == 12 * 24'000);
}

TEST_CASE("the beat of 6/8 is a dotted quarter unless another is given") {
    CHECK(render({"60", 60'000, 8000, 2, 1, 1, {"--meter", "6/8"}}).samples.size() == 16'000);
    CHECK(render({"60", 60'000, 8000, 6, 1, 1, {"--meter", "6/8", "--beat", "1/8"}}).samples.size() ==
          48'000);
    CHECK(render({"60", 60'000, 8000, 4, 1, 1, {"--meter", "12/8"}}).samples.size() == 32'000);
    CHECK(render({"60", 60'000, 8000, 3, 1, 1, {"--meter", "9/8"}}).samples.size() == 24'000);
    CHECK(render({"60", 60'000, 8000, 2, 1, 1, {"--beat", "1/2"}}).samples.size() == 16'000);
    CHECK(render({"60", 60'000, 8000, 7, 1, 1, {"--meter", "7/8", "--groups", "3+2+2"}}).samples.size() ==
          56'000);
}

TEST_CASE("options may be written with an equals sign, and the last of two counts") {
    const Scratch scratch;
    const std::string path = scratch.path("a.WAV");
    REQUIRE(
        runPiolo({"click", "--tempo=90", "--tempo=60", "--bars=1", "--rate=8000", "--out=" + path}).code ==
        0);
    CHECK(readSound(path).samples.size() == 32'000);
}

TEST_CASE("without a voice option the click is audible: more than one sample per pulse, never above 1") {
    const Scratch scratch;
    const std::string path = scratch.path("a.wav");
    REQUIRE(runPiolo({"click", "--tempo", "60", "--bars", "1", "--out", path}).code == 0);
    const WavSound sound = readSound(path);
    CHECK(sound.rate == 48'000);
    CHECK(sound.samples.size() == 192'000);
    CHECK(sound.onsets().size() > 1000);
    for (const Onset& onset : sound.onsets()) REQUIRE(std::abs(onset.level) <= 1.0F);
}

TEST_CASE("a locale with decimal commas changes nothing") {
    const Scratch scratch;
    const std::string path = scratch.path("a.wav");
    const Args words{"click", "--tempo", "72.5", "--bars", "1", "--voice", "impulse", "--out", path};
    Around german;
    german.environment = {{"LC_ALL", "de_DE.UTF-8"}, {"LANG", "de_DE.UTF-8"}};
    REQUIRE(runPiolo(words, german).code == 0);
    CHECK(readSound(path).onsets().at(1).sample == nearestSample(1, 48'000, 72'500, 1));
}

TEST_CASE("a click on 2 and 4, on downbeats or on off-beats has those onsets and no others") {
    struct Row {
        const char* on;
        std::vector<Onset> bar; // beats of 30000 samples: 96 BPM
    };
    const Row rows[] = {{"downbeats", {{0, 1.0F}}},
                        {"backbeats", {{30'000, 0.75F}, {90'000, 0.75F}}},
                        {"offbeats", {{15'000, 0.75F}, {45'000, 0.75F}, {75'000, 0.75F}, {105'000, 0.75F}}}};
    for (const auto& [on, bar] : rows) {
        CAPTURE(on);
        Click click{"96", 96'000};
        click.bars = 2;
        click.more = {"--click", on};
        std::vector<Onset> expected = bar;
        for (const Onset& onset : bar) expected.push_back({onset.sample + 120'000, onset.level});
        CHECK(render(click).onsets() == expected);
    }
}

TEST_CASE("the same seed leaves out the same beats, another seed others") {
    const auto heard = [](const char* seed) {
        Click click{"240", 240'000};
        click.bars = 40;
        click.more = {"--left-out", "30", "--silent-bars", "20", "--seed", seed};
        return render(click).onsets();
    };
    CHECK(heard("5") == heard("5"));
    CHECK(heard("5") != heard("6"));
    CHECK(heard("5").size() < 160);
}

TEST_CASE("a breath place makes the file longer by its wait and moves what follows") {
    Click click{"96", 96'000};
    click.bars = 2;
    click.more = {"--breath", "2:2:3"};
    const WavSound sound = render(click);
    CHECK(sound.samples.size() == 11 * 30'000);
    const std::vector<Onset> found = sound.onsets();
    REQUIRE(found.size() == 8);
    CHECK(found[4] == Onset{4 * 30'000, 1.0F});
    CHECK(found[5] == Onset{8 * 30'000, 0.75F});
}
