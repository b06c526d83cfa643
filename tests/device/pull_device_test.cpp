// SPDX-License-Identifier: GPL-3.0-or-later
#include "device/sound/pull_device.h"

#include "test_renderer.h"

#include <doctest/doctest.h>

#include <array>
#include <cstring>

using namespace piolo::device;

namespace {

struct Source {
    explicit Source(FrameFormat format) : device{feed, format} {}
    std::shared_ptr<RenderHost> host = std::make_shared<RenderHost>(std::make_shared<TestRenderer>());
    Feed feed{host, host->gate().allot()};
    PullDevice device;
};

template <typename Sample>
std::vector<Sample> read(Source& source, std::size_t samples) {
    std::vector<Sample> out(samples, Sample{9});
    const auto wanted = static_cast<qint64>(samples * sizeof(Sample));
    CHECK(source.device.read(reinterpret_cast<char*>(out.data()), wanted) == wanted);
    return out;
}

} // namespace

TEST_CASE("a read is always filled: silence at first, sound once it has the ownership") {
    Source source{{true, 1}};
    CHECK(read<float>(source, 960) == std::vector<float>(960, 0.0F));
    REQUIRE(source.feed.take(48'000));
    CHECK(read<float>(source, 960) == std::vector<float>(960, 1.0F));
    CHECK(read<float>(source, 20'000) == std::vector<float>(20'000, 1.0F));
    CHECK(source.host->rendered() == 20'960);
}

TEST_CASE("every channel gets the same sound") {
    Source source{{true, 3}};
    REQUIRE(source.feed.take(48'000));
    CHECK(read<float>(source, 30) == std::vector<float>(30, 1.0F));
    CHECK(source.host->rendered() == 10);
}

TEST_CASE("full scale in 16 bits is 32767") {
    Source source{{false, 2}};
    REQUIRE(source.feed.take(48'000));
    CHECK(read<std::int16_t>(source, 20) == std::vector<std::int16_t>(20, 32767));
    CHECK(source.host->rendered() == 10);
}

TEST_CASE("a read gives whole frames only") {
    Source source{{true, 2}};
    std::array<char, 30> out{};
    CHECK(source.device.read(out.data(), 30) == 24);
    CHECK(source.device.bytesAvailable() > 0);
    CHECK(source.device.isSequential());
}
