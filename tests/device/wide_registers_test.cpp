// SPDX-License-Identifier: GPL-3.0-or-later
// The processor itself reports which of its registers are in use: XGETBV with ECX = 1 (Intel 64 and IA-32
// Architectures Software Developer's Manual, volume 1, section 13.6).
#include "device/sound/feed.h"
#include "device/sound/wide_registers.h"

#include <doctest/doctest.h>

#include <array>
#include <memory>

#if defined(__x86_64__)
#include <cpuid.h>

using namespace piolo;
using namespace piolo::device;

namespace {

bool reportsUse() {
    unsigned a = 0;
    unsigned b = 0;
    unsigned c = 0;
    unsigned d = 0;
    return __get_cpuid_count(13, 1, &a, &b, &c, &d) != 0 && (a & 4U) != 0 &&
           __builtin_cpu_supports("avx") != 0;
}

bool wideInUse() {
    unsigned low = 0;
    unsigned high = 0;
    asm volatile("xgetbv" : "=a"(low), "=d"(high) : "c"(1));
    return (low & 4U) != 0;
}

void fillWide() { asm volatile("vcmptrueps %%ymm7, %%ymm7, %%ymm7" ::: "xmm7"); }

struct AskingRenderer final : engine::Renderer {
    bool wide = true;
    void prepare(engine::SampleRate /*rate*/, int /*maxBlock*/) override { wide = wideInUse(); }
    void render(std::span<float> /*out*/) noexcept override { wide = wideInUse(); }
};

} // namespace

TEST_CASE("the engine prepares and renders with the wide registers empty, whatever Qt left in them") {
    if (!reportsUse()) {
        MESSAGE("not checked: this processor does not report which registers are in use");
        return;
    }
    fillWide();
    REQUIRE(wideInUse());
    clearWideRegisters();
    CHECK(!wideInUse());

    const auto renderer = std::make_shared<AskingRenderer>();
    const auto host = std::make_shared<RenderHost>(renderer);
    Feed feed{host, host->gate().allot()};
    fillWide();
    REQUIRE(feed.take(48'000));
    CHECK(!renderer->wide);
    std::array<float, 64> out{};
    fillWide();
    feed.fill(out);
    CHECK(!renderer->wide);
}
#endif
