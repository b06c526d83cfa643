// SPDX-License-Identifier: GPL-3.0-or-later
// The interface to libFuzzer: PIOLO_TARGET names the target.
#include "target.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace {

const piolo::fuzz::Target& chosen() {
    const char* name = std::getenv("PIOLO_TARGET");
    for (const auto& target : piolo::fuzz::targets())
        if (name != nullptr && target.name == name) return target;
    std::fputs("PIOLO_TARGET names no target\n", stderr);
    std::exit(2);
}

} // namespace

extern "C" int LLVMFuzzerInitialize(int* /*count*/, char*** /*words*/) {
    // `piolo ladder` would wait for marks on standard input.
    return std::freopen("/dev/null", "r", stdin) == nullptr ? 1 : 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    static const auto& target = chosen();
    target.run({reinterpret_cast<const char*>(bytes), size});
    return 0;
}
